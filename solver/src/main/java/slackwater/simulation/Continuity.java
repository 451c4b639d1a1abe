package slackwater.simulation;

import java.util.Arrays;
import slackwater.field.Grid;

/**
 * Velocities through the faces of cells that neither make nor lose water. The mean of the two cells beside a face is
 * taken first; between cells of some width those means do not quite balance, and what floats would gather where water
 * seems to vanish. The nearest velocities that balance differ from them by a gradient (Helmholtz), which is sought by
 * conjugate gradients from that of the last time on [Hestenes1952].
 */
final class Continuity {
    static final long BYTES_PER_CELL = 5 * Double.BYTES + Byte.BYTES;
    /** What may be left of the imbalance, r.m.s.: 1 % of what the means have. */
    private static final double ENOUGH = 0.01;
    private static final int MOST_ROUNDS = 500;

    private final int[] step;
    private final byte[] open;
    private final double[] source;
    private final double[] gradient;
    private final double[] rest;
    private final double[] way;
    private final double[] product;

    /** @param sourcePerS share of each cell's water that arrives in a second, below 0 for what leaves */
    Continuity(Grid grid, boolean[] solid, float[] sourcePerS) {
        this.step = new int[] {1, grid.nx(), grid.nx() * grid.ny()};
        this.open = new byte[solid.length];
        this.source = new double[solid.length];
        this.gradient = new double[solid.length];
        this.rest = new double[solid.length];
        this.way = new double[solid.length];
        this.product = new double[solid.length];
        for (int cell = 0; cell < solid.length; cell++) {
            source[cell] = sourcePerS[cell] * grid.cellSizeM();
            int[] at = {cell % grid.nx(), cell / grid.nx() % grid.ny(), cell / step[2]};
            for (int axis = 0; axis < 3 && !solid[cell]; axis++) {
                open[cell] |= (byte) (at[axis] > 0 && !solid[cell - step[axis]] ? 1 << axis : 0);
            }
        }
    }

    /**
     * Fills in the velocity through the face of every cell towards smaller x, y and z; 0 through walls.
     *
     * @param cells velocity of every cell along x, y and z, metres a second
     * @param faces where to put the result, the same way
     */
    void balance(float[][] cells, float[][] faces) {
        System.arraycopy(source, 0, rest, 0, rest.length);
        for (int axis = 0; axis < 3; axis++) {
            for (int cell = 0; cell < open.length; cell++) {
                boolean through = (open[cell] >> axis & 1) != 0;
                int before = cell - step[axis];
                float mean = through ? (cells[axis][cell] + cells[axis][before]) / 2 : 0;
                faces[axis][cell] = mean;
                if (through) {
                    rest[cell] += mean;
                    rest[before] -= mean;
                }
            }
        }
        solve();
        for (int axis = 0; axis < 3; axis++) {
            for (int cell = 0; cell < open.length; cell++) {
                if ((open[cell] >> axis & 1) != 0) {
                    faces[axis][cell] -= (float) (gradient[cell] - gradient[cell - step[axis]]);
                }
            }
        }
    }

    /** Conjugate gradients for the potential whose differences carry away what does not balance. */
    private void solve() {
        double enough = ENOUGH * ENOUGH * squares(rest);
        differences(gradient);
        for (int cell = 0; cell < rest.length; cell++) {
            rest[cell] -= product[cell];
            way[cell] = rest[cell];
        }
        double squares = squares(rest);
        for (int round = 0; round < MOST_ROUNDS && squares > enough; round++) {
            differences(way);
            double along = 0;
            for (int cell = 0; cell < way.length; cell++) {
                along += way[cell] * product[cell];
            }
            double far = squares / along;
            for (int cell = 0; cell < way.length; cell++) {
                gradient[cell] += far * way[cell];
                rest[cell] -= far * product[cell];
            }
            double before = squares;
            squares = squares(rest);
            for (int cell = 0; cell < way.length; cell++) {
                way[cell] = rest[cell] + squares / before * way[cell];
            }
        }
    }

    private static double squares(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return sum;
    }

    /** What flows out of each cell if the velocity through a face is the difference across it. */
    private void differences(double[] potential) {
        Arrays.fill(product, 0);
        for (int cell = 0; cell < open.length; cell++) {
            for (int axis = 0; axis < 3; axis++) {
                if ((open[cell] >> axis & 1) != 0) {
                    double difference = potential[cell] - potential[cell - step[axis]];
                    product[cell] += difference;
                    product[cell - step[axis]] -= difference;
                }
            }
        }
    }
}
