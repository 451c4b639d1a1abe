package slackwater.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;
import slackwater.scenario.Wall;
import slackwater.search.Wishes.Clearances;

/** What a layout must keep to before any water is computed. */
public final class Rules {
    /**
     * A jet falls to a tenth of its axis speed at 1.8 half-radii, r_half = 0.094 x (Hussein, Capp and George 1994,
     * J. Fluid Mech. 258:31): 10 degrees.
     */
    private static final double JET_HALF_ANGLE_RAD = Math.toRadians(10);

    private final Wishes wishes;

    /**
     * Something that a layout breaks.
     *
     * @param byM by how much, metres; above 0
     * @param says in words
     */
    public record Breach(double byM, String says) {
    }

    public Rules(Wishes wishes) {
        this.wishes = wishes;
    }

    /** Everything that the pumps of a scenario break; empty where the layout is allowed. */
    public List<Breach> breaches(Scenario scenario, List<Piece> pieces) {
        List<Breach> breaches = new ArrayList<>();
        List<Pump> pumps = scenario.pumps();
        for (int n = 0; n < pumps.size(); n++) {
            Pump pump = pumps.get(n);
            Piece piece = pieces.get(n);
            onPane(scenario.tank(), pump, breaches);
            body(scenario, pump, piece, breaches);
            jet(scenario, pump, piece, breaches);
            for (int m = 0; m < n; m++) {
                double apart = pumps.get(m).atM().minus(pump.atM()).length();
                double needed = piece.reachM() + pieces.get(m).reachM();
                breach(needed - apart, quoted(pump) + " hangs in the way of " + quoted(pumps.get(m)), breaches);
            }
        }
        return List.copyOf(breaches);
    }

    /** How far a layout is from being allowed, metres; 0 where it is. */
    public double breachM(Scenario scenario, List<Piece> pieces) {
        return breaches(scenario, pieces).stream().mapToDouble(Breach::byM).sum();
    }

    private void onPane(Tank tank, Pump pump, List<Breach> breaches) {
        Wall pane = Pane.nearest(tank, pump.atM());
        if (!wishes.panes().contains(pane)) {
            breach(1, quoted(pump) + " hangs on the " + word(pane) + " pane, which is to stay free", breaches);
        }
        wishes.cablePane().ifPresent(to -> {
            double climb = tank.insideM().z() - pump.atM().z();
            double glass = climb + Pane.glassToM(tank, pane, Pane.alongM(pane, pump.atM()), to);
            breach(glass - wishes.cableReachM(), "the cable of " + quoted(pump) + " does not reach the " + word(to)
                    + " pane along the glass", breaches);
        });
    }

    private void body(Scenario scenario, Pump pump, Piece piece, List<Breach> breaches) {
        Clearances clear = wishes.clearances();
        Tank tank = scenario.tank();
        double half = piece.reachM();
        Vec3 middle = middleM(tank, pump, piece);
        Bounds body = new Bounds(middle.minus(new Vec3(half, half, half)), middle.plus(new Vec3(half, half, half)));
        for (Bounds space : wishes.keepOut()) {
            if (space.overlaps(body)) {
                breach(0.1, quoted(pump) + " is in a space to keep free", breaches);
            }
        }
        Wall own = Pane.nearest(tank, pump.atM());
        for (Wall pane : Wall.values()) {
            if (pane != own) {
                breach(half + clear.glassM() - Pane.offM(tank, pane, middle) - 1e-9, quoted(pump)
                        + " is too close to the " + word(pane) + " pane", breaches);
            }
        }
        double bottom = pump.atM().z() - piece.model().bodyM().z() / 2;
        breach(tank.sandDepthM() + clear.sandM() - bottom - 1e-9, quoted(pump) + " is too close to the sand", breaches);
        double above = tank.waterLevelM() - pump.atM().z();
        breach(Math.max(piece.model().leastDepthM(), clear.surfaceM() + piece.outletHalfM()) - above - 1e-9,
                quoted(pump) + " is so close to the surface that it may draw air", breaches);
        breach(above - piece.model().greatestDepthM() - 1e-9, quoted(pump) + " hangs deeper than it may", breaches);
        for (Rock rock : scenario.rocks()) {
            breach(half + clear.rockM() - rock.solid().signedDistanceM(middle), "the intake of " + quoted(pump)
                    + " is too close to rock '" + rock.name() + "'", breaches);
        }
        for (Coral coral : scenario.corals()) {
            double apart = middle.minus(coral.atM()).length() - half - coral.sizeM() / 2;
            breach(clear.coralM() - apart, quoted(pump) + " is too close to coral '" + coral.name() + "'", breaches);
        }
    }

    private void jet(Scenario scenario, Pump pump, Piece piece, List<Breach> breaches) {
        Vec3 aim = pump.aim();
        for (Coral coral : scenario.corals()) {
            Vec3 way = coral.atM().minus(pump.atM());
            double ahead = way.dot(aim);
            double beside = way.minus(aim.times(ahead)).length() - coral.sizeM() / 2 - piece.outletHalfM();
            if (ahead > 0 && beside < ahead * Math.tan(JET_HALF_ANGLE_RAD)) {
                breach(wishes.clearances().jetM() - way.length(), quoted(pump) + " blows straight onto coral '"
                        + coral.name() + "' from close by", breaches);
            }
        }
        double free = 2 * Math.max(piece.outletHalfM(), 0.02);
        for (int step = 1; step <= 8; step++) {
            Vec3 point = pump.atM().plus(aim.times(free * step / 8));
            double rock = scenario.rocks().stream().mapToDouble(one -> one.solid().signedDistanceM(point)).min()
                    .orElse(1);
            double out = Math.max(scenario.tank().sandDepthM() - point.z(), outsideM(scenario.tank(), point));
            if (rock < 0 || out > 0) {
                breach(Math.max(0.01, Math.max(-rock, out)), quoted(pump) + " blows into glass, rock or sand at once",
                        breaches);
                return;
            }
        }
    }

    private static double outsideM(Tank tank, Vec3 point) {
        double most = Double.NEGATIVE_INFINITY;
        for (Wall pane : Wall.values()) {
            most = Math.max(most, -Pane.offM(tank, pane, point));
        }
        return most;
    }

    /** The middle of the body, half its length behind the outlet towards its own pane, metres. */
    private static Vec3 middleM(Tank tank, Pump pump, Piece piece) {
        Vec3 inward = Vec3.aim(Pane.inwardYawRad(Pane.nearest(tank, pump.atM())), 0);
        return pump.atM().minus(inward.times(piece.model().bodyM().x() / 2));
    }


    private static void breach(double byM, String says, List<Breach> breaches) {
        if (byM > 0) {
            breaches.add(new Breach(byM, says));
        }
    }

    private static String quoted(Pump pump) {
        return "pump '" + pump.name() + "'";
    }

    private static String word(Wall pane) {
        return pane.name().toLowerCase(Locale.ROOT);
    }
}
