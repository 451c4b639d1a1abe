package slackwater.detritus;

import java.util.List;
import slackwater.field.FlowRecord;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;

/**
 * Where rock is too steep for anything to lie on. The grid makes steps of a slope, and every step would hold; so the
 * slope is asked of the rock itself, and what lands on a step of a steep one slides off it, downhill.
 */
final class Slopes {
    /** Steeper than 45 degrees nothing rests: between sand's angle of repose and what rough rock holds, assumed. */
    private static final double UPRIGHT = Math.cos(Math.toRadians(45));
    /** Differences for the normal are taken over this share of a cell to either side. */
    private static final double REACH = 0.5;

    private final float[] downhill;

    private Slopes(float[] downhill) {
        this.downhill = downhill;
    }

    static Slopes of(List<Rock> rocks, FlowRecord record, Ground ground) {
        Grid grid = record.grid();
        float[] downhill = new float[2 * grid.cells()];
        for (int cell = 0; cell < grid.cells() && !rocks.isEmpty(); cell++) {
            if (record.hasFloor(cell) && ground.under(cell) == Place.ROCK) {
                Vec3 centre = grid.centreM(cell);
                Vec3 foot = new Vec3(centre.x(), centre.y(), centre.z() - grid.cellSizeM() / 2);
                Vec3 normal = normal(rocks, foot, REACH * grid.cellSizeM());
                double level = Math.hypot(normal.x(), normal.y());
                if (level > 0 && normal.z() < UPRIGHT * normal.length()) {
                    downhill[2 * cell] = (float) (normal.x() / level);
                    downhill[2 * cell + 1] = (float) (normal.y() / level);
                }
            }
        }
        return new Slopes(downhill);
    }

    /** Which way is out of the nearest rock, of any length. */
    private static Vec3 normal(List<Rock> rocks, Vec3 at, double reachM) {
        Rock nearest = rocks.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (Rock rock : rocks) {
            double away = Math.abs(rock.solid().signedDistanceM(at));
            if (away < least) {
                least = away;
                nearest = rock;
            }
        }
        return new Vec3(slope(nearest, at, new Vec3(reachM, 0, 0)), slope(nearest, at, new Vec3(0, reachM, 0)),
                slope(nearest, at, new Vec3(0, 0, reachM)));
    }

    private static double slope(Rock rock, Vec3 at, Vec3 step) {
        return rock.solid().signedDistanceM(at.plus(step)) - rock.solid().signedDistanceM(at.minus(step));
    }

    /** Whether nothing rests on the floor of a cell. */
    boolean isSteep(int cell) {
        return downhill[2 * cell] != 0 || downhill[2 * cell + 1] != 0;
    }

    /** Downhill along x, part of a unit vector. */
    double x(int cell) {
        return downhill[2 * cell];
    }

    double y(int cell) {
        return downhill[2 * cell + 1];
    }
}
