package slackwater.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/** Why the water at a coral is slow or strong, as far as the layout shows it: rock in the way, aim, distance. */
final class Reasons {
    private static final double STEP_M = 0.005;
    private static final double AT_CORAL_M = 0.02;
    /**
     * A jet falls to a tenth of its axis speed at 1.8 half-radii, r_half = 0.094 x (Hussein, Capp and George 1994,
     * J. Fluid Mech. 258:31): 10 degrees; beyond twice that the jet itself does not reach.
     */
    private static final double JET_EDGE_RAD = Math.toRadians(20);
    private static final int SHOWN = 2;

    private final List<Line> lines;

    /** The straight line from one pump to the coral. */
    private record Line(Pump pump, double distanceM, double offAimRad, Optional<String> shadedBy) {
        boolean isHit() {
            return shadedBy.isEmpty() && offAimRad <= JET_EDGE_RAD;
        }
    }

    Reasons(Scenario scenario, Coral coral, double cellSizeM) {
        Vec3 target = Probes.centreM(coral, cellSizeM);
        lines = scenario.pumps().stream()
                .filter(Reasons::isRunning)
                .map(pump -> line(pump, target, scenario.rocks()))
                .sorted(Comparator.comparingDouble(Line::distanceM))
                .toList();
    }

    static boolean isRunning(Pump pump) {
        return pump.outputFraction() > 0 && pump.flowM3PerS() > 0 && pump.foulingFraction() < 1;
    }

    /** Why it is slow: one clause a pump, the nearest first. */
    String slow() {
        if (lines.isEmpty()) {
            return "no circulation pump is running";
        }
        List<String> clauses = new ArrayList<>();
        for (Line line : lines.subList(0, Math.min(SHOWN, lines.size()))) {
            clauses.add(slow(line));
        }
        return String.join(", and ", clauses);
    }

    private static String slow(Line line) {
        String pump = "pump '" + line.pump.name() + "'";
        if (line.shadedBy.isPresent()) {
            return line.shadedBy.get() + " shades it from " + pump;
        }
        if (line.offAimRad > JET_EDGE_RAD) {
            return "it lies " + Math.round(Math.toDegrees(line.offAimRad)) + " degrees off the aim of " + pump;
        }
        return pump + " reaches it only after " + Figures.cm(line.distanceM) + " cm";
    }

    /** Why it is strong: the jet that it stands in, else the nearest pump. */
    String strong() {
        Optional<Line> hit = lines.stream().filter(Line::isHit).findFirst();
        if (hit.isPresent()) {
            return "it stands in the jet of pump '" + hit.get().pump.name() + "', " + Figures.cm(hit.get().distanceM)
                    + " cm away";
        }
        return lines.stream().findFirst()
                .map(line -> "the nearest pump, '" + line.pump.name() + "', is " + Figures.cm(line.distanceM)
                        + " cm away")
                .orElse("the return alone drives it");
    }

    private static Line line(Pump pump, Vec3 target, List<Rock> rocks) {
        Vec3 way = target.minus(pump.atM());
        double distance = way.length();
        double cosine = distance == 0 ? 1 : way.dot(pump.aim()) / distance;
        double offAim = Math.acos(Math.max(-1, Math.min(1, cosine)));
        return new Line(pump, distance, offAim, shade(pump.atM(), way, rocks));
    }

    /** The rock that hides most of the line, if any; the last stretch before the coral is its own rock's: left out. */
    private static Optional<String> shade(Vec3 from, Vec3 way, List<Rock> rocks) {
        int steps = (int) Math.floor((way.length() - AT_CORAL_M) / STEP_M);
        Vec3 step = way.normalised().times(STEP_M);
        int most = 0;
        Optional<String> shade = Optional.empty();
        for (Rock rock : rocks) {
            int inside = 0;
            for (int n = 1; n <= steps; n++) {
                inside += rock.solid().contains(from.plus(step.times(n))) ? 1 : 0;
            }
            if (inside > most) {
                most = inside;
                shade = Optional.of(Places.theRock(rock.name()));
            }
        }
        return shade;
    }
}
