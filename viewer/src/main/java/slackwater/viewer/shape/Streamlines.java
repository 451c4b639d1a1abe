package slackwater.viewer.shape;

import java.util.List;
import slackwater.geometry.Vec3;

/**
 * Lines that are everywhere along the flow, by the classical fourth-order Runge-Kutta method in steps of a fraction of
 * a cell. Each carries the speed of the mean flow, metres per second.
 */
public final class Streamlines {
    /** Length of a step in cells: short enough that a circle of ten cells closes to a thousandth of a cell. */
    private static final double STEP_CELLS = 0.5;
    private static final double LEAST_M_PER_S = 1e-3;

    private final Current current;
    private final double longestM;
    private final double[] slope = new double[3];

    /** @param longestM length at which a line ends if it has not left the water before, each way */
    public Streamlines(Current current, double longestM) {
        this.current = current;
        this.longestM = longestM;
    }

    /** Lines that pass through the seeds, upstream and downstream; seeds outside the water give none. */
    public Polylines through(List<Vec3> seedsM) {
        Polylines.Collector lines = new Polylines.Collector();
        for (Vec3 seed : seedsM) {
            Floats up = trace(seed, -1);
            Floats down = trace(seed, 1);
            add(lines, up, down);
        }
        return lines.lines();
    }

    /** Lines that begin at the seeds and follow the water. */
    public Polylines from(List<Vec3> seedsM) {
        Polylines.Collector lines = new Polylines.Collector();
        for (Vec3 seed : seedsM) {
            add(lines, new Floats(), trace(seed, 1));
        }
        return lines.lines();
    }

    private static void add(Polylines.Collector lines, Floats up, Floats down) {
        for (int n = up.size() - 4; n > 0; n -= 4) {
            lines.add(up.get(n), up.get(n + 1), up.get(n + 2), up.get(n + 3));
        }
        for (int n = 0; n < down.size(); n += 4) {
            lines.add(down.get(n), down.get(n + 1), down.get(n + 2), down.get(n + 3));
        }
        lines.endLine();
    }

    /** Points and speeds, four numbers each, from the seed on. */
    private Floats trace(Vec3 seed, int direction) {
        Floats trace = new Floats();
        double[] at = {seed.x(), seed.y(), seed.z()};
        double step = direction * STEP_CELLS * current.grid().cellSizeM();
        long steps = Math.round(longestM / Math.abs(step));
        for (long n = 0; n <= steps && current.isWater(at[0], at[1], at[2]); n++) {
            current.at(at[0], at[1], at[2], slope);
            double speed = Math.sqrt(slope[0] * slope[0] + slope[1] * slope[1] + slope[2] * slope[2]);
            for (double coordinate : at) {
                trace.add((float) coordinate);
            }
            trace.add((float) speed);
            if (speed < LEAST_M_PER_S || !advance(at, step)) {
                break;
            }
        }
        return trace;
    }

    /** One step along the direction of the flow; false where the water ends within it. */
    private boolean advance(double[] at, double step) {
        double[] start = at.clone();
        double[] sum = new double[3];
        double[] lengths = {0, 0.5, 0.5, 1};
        double[] weights = {1, 2, 2, 1};
        double[] direction = new double[3];
        for (int stage = 0; stage < 4; stage++) {
            if (!current.at(start[0] + step * lengths[stage] * direction[0],
                    start[1] + step * lengths[stage] * direction[1],
                    start[2] + step * lengths[stage] * direction[2], slope)) {
                return false;
            }
            double speed = Math.sqrt(slope[0] * slope[0] + slope[1] * slope[1] + slope[2] * slope[2]);
            for (int n = 0; n < 3; n++) {
                direction[n] = slope[n] / Math.max(speed, 1e-12);
                sum[n] += weights[stage] * direction[n] / 6;
            }
        }
        for (int n = 0; n < 3; n++) {
            at[n] += step * sum[n];
        }
        return true;
    }
}
