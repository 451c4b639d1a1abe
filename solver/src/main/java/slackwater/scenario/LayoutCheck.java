package slackwater.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Shown;

/** Tells of things that cannot stand where the file puts them. */
final class LayoutCheck {
    /** A coral may be sunk into its rock or the sand by this much: nobody places one better (common practice). */
    private static final double SUNK_M = 0.01;
    /** A coral must have open water this far out in the direction that it faces. */
    private static final double OPEN_M = 0.02;
    private static final int STEPS_AHEAD = 24;

    /** An opening that blows into the tank. */
    private record Jet(Entry entry, Key at, Vec3 atM, Vec3 aim, double diameterM) {
    }

    private final Tank tank;
    private final Layout layout;
    private final Bounds glass;

    LayoutCheck(Tank tank, Layout layout) {
        this.tank = tank;
        this.layout = layout;
        this.glass = new Bounds(Vec3.ZERO, tank.insideM());
    }

    void tell() {
        layout.rocks().stream().filter(rock -> !rock.thing().solid().bounds().overlaps(glass))
                .forEach(rock -> rock.entry().fault("found wholly outside the tank, must reach into it; move it"));
        layout.overflow().ifPresent(weir -> OverflowTable.check(weir, tank));
        List<Jet> jets = jets();
        jets.forEach(this::tellJet);
        tellOverlaps(jets);
        layout.corals().forEach(this::tellCoral);
    }

    private List<Jet> jets() {
        List<Jet> jets = new ArrayList<>();
        layout.pumps().forEach(pump -> jets.add(new Jet(pump.entry(), PumpTable.AT, pump.thing().atM(),
                pump.thing().aim(), Math.sqrt(4 / Math.PI * pump.thing().outlet().areaM2()))));
        layout.returnLine().ifPresent(line -> jets.add(new Jet(line.entry(), ReturnTable.AT, line.thing().atM(),
                line.thing().aim(), line.thing().nozzleM())));
        return jets;
    }

    private void tellJet(Jet jet) {
        Optional<String> amiss = outsideWater(jet.entry(), jet.at(), jet.atM(), 0);
        amiss.or(() -> blockedAhead(jet)).ifPresent(says -> jet.entry().fault(jet.at(), says));
    }

    private void tellCoral(Placed<Coral> placed) {
        Coral coral = placed.thing();
        Key at = CoralTable.AT;
        outsideWater(placed.entry(), at, coral.atM(), SUNK_M).ifPresentOrElse(
                says -> placed.entry().fault(at, says),
                () -> solidAt(coral.atM().plus(coral.facing().times(OPEN_M))).ifPresent(what ->
                        placed.entry().fault(CoralTable.FACING, "faces into " + what + ", must have "
                                + placed.entry().inUnitOf(at, OPEN_M) + " of open water before it; turn or move it")));
    }

    /** Why a point is not in the water, where it is sunk by more than is allowed. */
    private Optional<String> outsideWater(Entry entry, Key at, Vec3 point, double sunkM) {
        String found = "found " + entry.shown(at);
        if (!glass.contains(point)) {
            Vec3 inside = tank.insideM();
            return Optional.of(found + " outside the tank, must be within 0 to " + entry.inUnitOf(at, inside.x())
                    + ", 0 to " + entry.inUnitOf(at, inside.y()) + ", 0 to " + entry.inUnitOf(at, inside.z()));
        }
        if (point.z() > tank.waterLevelM()) {
            return Optional.of(found + " above the water, must be at most " + entry.inUnitOf(at, tank.waterLevelM())
                    + " high");
        }
        if (point.z() < tank.sandDepthM() - sunkM) {
            return Optional.of(found + " in the sand, must be above its " + entry.inUnitOf(at, tank.sandDepthM())
                    + "; raise it");
        }
        return layout.rocks().stream().filter(rock -> rock.thing().solid().signedDistanceM(point) < -sunkM).findFirst()
                .map(rock -> found + " inside " + named(rock) + ", must be in open water; move it");
    }

    private Optional<String> blockedAhead(Jet jet) {
        for (int step = 1; step <= STEPS_AHEAD; step++) {
            double ahead = jet.diameterM() * step / STEPS_AHEAD;
            Optional<String> what = solidAt(jet.atM().plus(jet.aim().times(ahead)));
            if (what.isPresent()) {
                return Optional.of("aims at " + what.get() + " " + jet.entry().inUnitOf(jet.at(), ahead)
                        + " ahead, must be at least its outlet's " + jet.entry().inUnitOf(jet.at(), jet.diameterM())
                        + " away; turn or move it");
            }
        }
        return Optional.empty();
    }

    /** What is not water at a point, in words. The air above the water is no obstacle. */
    private Optional<String> solidAt(Vec3 point) {
        if (point.x() < 0 || point.x() > tank.insideM().x()) {
            return Optional.of(point.x() < 0 ? "the left pane" : "the right pane");
        }
        if (point.y() < 0 || point.y() > tank.insideM().y()) {
            return Optional.of(point.y() < 0 ? "the front pane" : "the back pane");
        }
        if (point.z() < tank.sandDepthM()) {
            return Optional.of(tank.sandDepthM() > 0 ? "the sand" : "the bottom");
        }
        return layout.rocks().stream().filter(rock -> rock.thing().solid().contains(point)).findFirst()
                .map(LayoutCheck::named);
    }

    private static String named(Placed<Rock> rock) {
        return rock.entry().path() + " " + Shown.text(rock.thing().name());
    }

    private static void tellOverlaps(List<Jet> jets) {
        for (int i = 0; i < jets.size(); i++) {
            for (Jet later : jets.subList(i + 1, jets.size())) {
                tellOverlap(jets.get(i), later);
            }
        }
    }

    private static void tellOverlap(Jet earlier, Jet later) {
        double apart = later.atM().minus(earlier.atM()).length();
        double needed = (earlier.diameterM() + later.diameterM()) / 2;
        if (apart < needed) {
            later.entry().fault(later.at(), "found " + later.entry().inUnitOf(later.at(), apart) + " from "
                    + earlier.entry().path() + ", must be at least " + later.entry().inUnitOf(later.at(), needed)
                    + " away, or their intakes overlap; move one of them");
        }
    }
}
