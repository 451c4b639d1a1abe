package slackwater.detritus;

import java.util.Arrays;
import slackwater.field.FlowRecord;
import slackwater.geometry.Vec3;
import slackwater.units.Seawater;

/**
 * The water's shear stress on a coral: law of the wall, with the velocity a little above it. The law goes with the
 * threshold that it is held against: that of a smooth wall where grains lift as from smooth ground, that of a rough one
 * where they lie in hollows.
 */
final class Drag {
    /** Roughness of corals as the water feels it, metres, as for live rock: assumed; z0 is a 30th [Nikuradse1933]. */
    private static final double ROUGHNESS_M = 0.005;
    /** Height above a coral at which the water is read, metres; at least 1.5 cells. */
    private static final double ABOVE_M = 0.015;
    private static final double ABOVE_CELLS = 1.5;
    /** Nearer than half a cell the water is that of the cell's centre. */
    private static final double LEAST_CELLS = 0.5;
    /** [Pope2000]. */
    private static final double KARMAN = 0.41;
    /** z0 of a smooth wall is nu/(9 u*) [Nikuradse1933]. */
    private static final double SMOOTH = 9;
    private static final int ROUNDS = 8;
    private static final int POINTS = 19;
    private static final double GUST_FRACTION = 0.95;

    private final Water water;
    private final Ground ground;
    private final double cellSizeM;
    private final double aboveCells;
    private final double leastM;

    Drag(FlowRecord record, Water water, Ground ground) {
        this.water = water;
        this.ground = ground;
        this.cellSizeM = record.grid().cellSizeM();
        this.aboveCells = Math.max(ABOVE_M / cellSizeM, ABOVE_CELLS);
        this.leastM = Math.max(LEAST_CELLS * cellSizeM, ROUGHNESS_M);
    }

    /** At a place on a coral, in cells, a share of the way from a frame to the next; 0 where rock covers it. */
    double pa(int coral, double x, double y, double z, double share) {
        Vec3 facing = ground.coral(coral).facing();
        for (double up = aboveCells; up > 0; up -= 0.25) {
            double a = x + up * facing.x();
            double b = y + up * facing.y();
            double c = z + up * facing.z();
            if (water.isWater(a, b, c)) {
                water.read(a, b, c, share);
                double speed = cellSizeM * Math.sqrt(water.u * water.u + water.v * water.v + water.w * water.w);
                return pa(ground.footing(Place.CORAL, coral), speed, Math.max(leastM, up * cellSizeM));
            }
        }
        return 0;
    }

    /** By the law of the wall, from the speed, metres a second, at a height, metres, over smooth or rough ground. */
    static double pa(Footing footing, double speedMPerS, double heightM) {
        double perFriction = footing == Footing.SMOOTH ? smooth(speedMPerS, heightM)
                : Math.log(heightM * 30 / ROUGHNESS_M) / KARMAN;
        double friction = perFriction == 0 ? 0 : speedMPerS / perFriction;
        return Seawater.DENSITY_KG_PER_M3 * friction * friction;
    }

    /** u/u* over a smooth wall: ln(9 u* y/nu)/kappa, or where that is less, as in the viscous sublayer, u* y/nu. */
    private static double smooth(double speedMPerS, double heightM) {
        double reynolds = speedMPerS * heightM / Seawater.KINEMATIC_VISCOSITY_M2_PER_S;
        double viscous = Math.sqrt(reynolds);
        double plus = viscous;
        for (int round = 0; round < ROUNDS && plus > 0; round++) {
            // Newton's rule on kappa u+ + ln(u+) = ln(9 Re); from where it is negative the root is beyond the sublayer
            double excess = KARMAN * plus + Math.log(plus / (SMOOTH * reynolds));
            double nearer = Math.min(viscous, plus - excess / (KARMAN + 1 / plus));
            if (nearer == plus) {
                return plus;
            }
            plus = nearer;
        }
        return plus;
    }

    /** Over a whole coral in the water of a record: mean in time and the stress passed 5 % of the time, pascals. */
    static Stress over(int coral, Ground ground, FlowRecord record, Water water) {
        Drag drag = new Drag(record, water, ground);
        double[] each = new double[record.frames()];
        for (int frame = 0; frame < each.length; frame++) {
            water.turnTo(frame);
            for (int n = 0; n < POINTS; n++) {
                // a sunflower's pattern fills the disc evenly
                Vec3 point = ground.coral(coral).point((n + 0.5) / POINTS, 2.4 * n);
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
