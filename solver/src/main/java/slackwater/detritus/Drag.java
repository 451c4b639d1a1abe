package slackwater.detritus;

import java.util.Arrays;
import slackwater.field.FlowRecord;
import slackwater.geometry.Vec3;
import slackwater.units.Seawater;

/** The water's shear stress on a coral: law of the wall, rho (kappa/ln(y/z0))^2 u^2, with u a little above it. */
final class Drag {
    /** Roughness of corals as the water feels it, metres, as for live rock: assumed; z0 is a 30th [Nikuradse1933]. */
    private static final double ROUGHNESS_M = 0.005;
    /** Height above a coral at which the water is read, metres; at least 1.5 cells. */
    private static final double ABOVE_M = 0.015;
    private static final double ABOVE_CELLS = 1.5;
    /** [Pope2000]. */
    private static final double KARMAN = 0.41;
    private static final int POINTS = 19;
    private static final double GUST_FRACTION = 0.95;

    private final Water water;
    private final double aboveCells;
    private final double paPerSquare;

    Drag(FlowRecord record, Water water) {
        double cellSizeM = record.grid().cellSizeM();
        double above = Math.max(ABOVE_M, ABOVE_CELLS * cellSizeM);
        double law = KARMAN / Math.log(above * 30 / ROUGHNESS_M);
        this.water = water;
        this.aboveCells = above / cellSizeM;
        this.paPerSquare = law * law * Seawater.DENSITY_KG_PER_M3 * cellSizeM * cellSizeM;
    }

    /** At a place on a coral, in cells, a share of the way from a frame to the next; 0 where rock covers it. */
    double pa(Disc coral, double x, double y, double z, double share) {
        for (double up = aboveCells; up > 0; up -= 0.25) {
            double a = x + up * coral.facing().x();
            double b = y + up * coral.facing().y();
            double c = z + up * coral.facing().z();
            if (water.isWater(a, b, c)) {
                water.read(a, b, c, share);
                return paPerSquare * (water.u * water.u + water.v * water.v + water.w * water.w);
            }
        }
        return 0;
    }

    /** Over a whole coral: mean in time and the stress that is passed 5 % of the time, pascals. */
    static Stress over(Disc coral, FlowRecord record) {
        Water water = new Water(record);
        Drag drag = new Drag(record, water);
        double[] each = new double[record.frames()];
        for (int frame = 0; frame < each.length; frame++) {
            water.turnTo(frame);
            for (int n = 0; n < POINTS; n++) {
                // a sunflower's pattern fills the disc evenly
                Vec3 point = coral.point((n + 0.5) / POINTS, 2.4 * n);
                each[frame] += drag.pa(coral, point.x(), point.y(), point.z(), 0) / POINTS;
            }
        }
        double mean = Arrays.stream(each).average().orElse(0);
        Arrays.sort(each);
        return new Stress(mean, each[(int) Math.floor(GUST_FRACTION * (each.length - 1))]);
    }

    /** Mean in time and gusts, pascals. */
    record Stress(double meanPa, double gustPa) {
    }
}
