package slackwater.viewer.shape;

import java.util.SplittableRandom;
import slackwater.field.Grid;

/**
 * Specks that the water carries. Each lives for some seconds and then starts anew at a random place in the water, so
 * that they stay spread out; the same seed and steps give the same specks.
 */
public final class Tracers {
    private static final double LEAST_LIFE_S = 4;
    private static final double MOST_LIFE_S = 12;
    private static final int TRIES = 200;

    private final SplittableRandom random;
    private final float[] points;
    private final float[] leftS;
    private final double[] velocity = new double[3];
    private Current current;

    /** @param count how many */
    public Tracers(Current current, int count, long seed) {
        this.current = current;
        this.random = new SplittableRandom(seed);
        this.points = new float[3 * count];
        this.leftS = new float[count];
        for (int n = 0; n < count; n++) {
            restart(n);
            leftS[n] *= (float) random.nextDouble();
        }
    }

    public int count() {
        return leftS.length;
    }

    /** Three coordinates a speck, metres: a copy. */
    public float[] points() {
        return points.clone();
    }

    /** From now on another flow carries them, on a grid of any size. */
    public void follow(Current newer) {
        this.current = newer;
    }

    /** Moves every speck by some seconds (midpoint rule), in steps short enough for the grid. */
    public void advance(double seconds) {
        for (int n = 0; n < leftS.length; n++) {
            leftS[n] -= (float) seconds;
            if (leftS[n] <= 0 || !move(n, seconds)) {
                restart(n);
            }
        }
    }

    private boolean move(int n, double seconds) {
        double[] at = {points[3 * n], points[3 * n + 1], points[3 * n + 2]};
        if (!carry(at, seconds)) {
            return false;
        }
        for (int axis = 0; axis < 3; axis++) {
            points[3 * n + axis] = (float) at[axis];
        }
        return true;
    }

    /** Carries a point along, also backwards; false where it leaves the water. */
    private boolean carry(double[] at, double seconds) {
        if (!current.at(at[0], at[1], at[2], velocity)) {
            return false;
        }
        double half = seconds / 2;
        if (!current.at(at[0] + half * velocity[0], at[1] + half * velocity[1], at[2] + half * velocity[2],
                velocity)) {
            return false;
        }
        for (int axis = 0; axis < 3; axis++) {
            at[axis] += seconds * velocity[axis];
        }
        return current.isWater(at[0], at[1], at[2]);
    }

    /** Where the specks have come from over the last seconds, with the speed at each point, metres per second. */
    public Polylines trails(double seconds, int pieces) {
        Polylines.Collector lines = new Polylines.Collector();
        for (int n = 0; n < leftS.length; n++) {
            double[] at = {points[3 * n], points[3 * n + 1], points[3 * n + 2]};
            for (int piece = 0; piece <= pieces; piece++) {
                current.at(at[0], at[1], at[2], velocity);
                double speed = Math.sqrt(velocity[0] * velocity[0] + velocity[1] * velocity[1]
                        + velocity[2] * velocity[2]);
                lines.add((float) at[0], (float) at[1], (float) at[2], (float) speed);
                if (!carry(at, -seconds / pieces)) {
                    break;
                }
            }
            lines.endLine();
        }
        return lines.lines();
    }

    private void restart(int n) {
        Grid grid = current.grid();
        double h = grid.cellSizeM();
        for (int attempt = 0; attempt < TRIES; attempt++) {
            double x = random.nextDouble() * grid.nx() * h;
            double y = random.nextDouble() * grid.ny() * h;
            double z = random.nextDouble() * grid.nz() * h;
            if (current.isWater(x, y, z) || attempt == TRIES - 1) {
                points[3 * n] = (float) x;
                points[3 * n + 1] = (float) y;
                points[3 * n + 2] = (float) z;
                break;
            }
        }
        leftS[n] = (float) (LEAST_LIFE_S + random.nextDouble() * (MOST_LIFE_S - LEAST_LIFE_S));
    }
}
