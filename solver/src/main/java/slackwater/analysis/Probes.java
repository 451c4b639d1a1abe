package slackwater.analysis;

import java.util.ArrayList;
import java.util.List;
import slackwater.field.Grid;
import slackwater.field.Probe;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;

/** The points to watch: for each coral a disc of its own size, held a little off it into the water. */
public final class Probes {
    private static final double LEAST_LIFT_M = 0.015;
    private static final double LIFT_CELLS = 1.5;
    private static final double[] LIFTS = {1, 1.5, 2, 2.5, 3};
    private static final int[] RING_POINTS = {6, 12};

    private Probes() {
    }

    /**
     * One probe a coral, in the order of the scenario. A disc that is mostly inside rock is lifted further, up to
     * three times; of the disc only points in water are kept.
     *
     * @param fluid true where there is water, in the order of the grid
     * @throws UnfitGrid if no point before a coral is in water; the message names the coral
     */
    public static List<Probe> of(Scenario scenario, Grid grid, boolean[] fluid) {
        List<Probe> probes = new ArrayList<>();
        for (Coral coral : scenario.corals()) {
            SpeedRange range = CoralNeeds.rangeFor(coral);
            probes.add(new Probe(coral.name(), points(coral, grid, fluid),
                    List.of(range.lowMPerS(), range.highMPerS())));
        }
        return probes;
    }

    /** The middle of the disc before its lift is corrected for rock, metres. */
    static Vec3 centreM(Coral coral, double cellSizeM) {
        return coral.atM().plus(coral.facing().normalised().times(liftM(cellSizeM)));
    }

    private static double liftM(double cellSizeM) {
        return Math.max(LEAST_LIFT_M, LIFT_CELLS * cellSizeM);
    }

    private static List<Vec3> points(Coral coral, Grid grid, boolean[] fluid) {
        List<Vec3> most = List.of();
        for (double lift : LIFTS) {
            List<Vec3> disc = disc(coral, lift * liftM(grid.cellSizeM()));
            List<Vec3> wet = disc.stream().filter(point -> isWater(point, grid, fluid)).toList();
            if (2 * wet.size() >= disc.size()) {
                return wet;
            }
            most = wet.size() > most.size() ? wet : most;
        }
        if (most.isEmpty()) {
            throw new UnfitGrid(noWater(coral, grid));
        }
        return most;
    }

    private static List<Vec3> disc(Coral coral, double liftM) {
        Vec3 facing = coral.facing().normalised();
        Vec3 other = Math.abs(facing.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
        Vec3 across = facing.cross(other).normalised();
        Vec3 along = facing.cross(across);
        Vec3 centre = coral.atM().plus(facing.times(liftM));
        List<Vec3> disc = new ArrayList<>(List.of(centre));
        for (int ring = 0; ring < RING_POINTS.length; ring++) {
            double radiusM = coral.sizeM() / 2 * (ring + 1) / RING_POINTS.length;
            for (int point = 0; point < RING_POINTS[ring]; point++) {
                double angle = 2 * Math.PI * point / RING_POINTS[ring];
                disc.add(centre.plus(across.times(radiusM * Math.cos(angle)))
                        .plus(along.times(radiusM * Math.sin(angle))));
            }
        }
        return disc;
    }

    private static boolean isWater(Vec3 point, Grid grid, boolean[] fluid) {
        int i = (int) Math.floor(point.x() / grid.cellSizeM());
        int j = (int) Math.floor(point.y() / grid.cellSizeM());
        int k = (int) Math.floor(point.z() / grid.cellSizeM());
        return i >= 0 && i < grid.nx() && j >= 0 && j < grid.ny() && k >= 0 && k < grid.nz()
                && fluid[grid.index(i, j, k)];
    }

    private static String noWater(Coral coral, Grid grid) {
        Vec3 at = coral.atM();
        return "coral \"" + coral.name() + "\" at [" + Figures.plain(at.x() * 100) + ", "
                + Figures.plain(at.y() * 100) + ", " + Figures.plain(at.z() * 100)
                + "] cm has no water before it on a grid of " + Figures.plain(grid.cellSizeM() * 100)
                + " cm: move it out of the rock, check which way it faces, or use smaller cells";
    }
}
