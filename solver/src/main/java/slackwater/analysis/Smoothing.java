package slackwater.analysis;

import slackwater.field.Grid;

/** Means over the boxes of cells about each cell. */
final class Smoothing {
    private Smoothing() {
    }

    /**
     * Replaces each value by the mean over the cells that count within a reach, in place, one axis after the other.
     *
     * @param counts which cells count; the others come out as 0
     * @param reach cells to each side
     */
    static void within(Grid grid, boolean[] counts, float[] values, int reach) {
        float[] weights = new float[values.length];
        for (int cell = 0; cell < values.length; cell++) {
            weights[cell] = counts[cell] ? 1 : 0;
            values[cell] = counts[cell] ? values[cell] : 0;
        }
        int[] lengths = {grid.nx(), grid.ny(), grid.nz()};
        int[] strides = {1, grid.nx(), grid.nx() * grid.ny()};
        for (int axis = 0; axis < 3; axis++) {
            sum(values, lengths[axis], strides[axis], reach);
            sum(weights, lengths[axis], strides[axis], reach);
        }
        for (int cell = 0; cell < values.length; cell++) {
            values[cell] = counts[cell] ? values[cell] / weights[cell] : 0;
        }
    }

    /** Sums along every line of one axis. */
    private static void sum(float[] values, int length, int stride, int reach) {
        double[] upTo = new double[length + 1];
        for (int first = 0; first < values.length; first++) {
            if (first / stride % length == 0) {
                for (int n = 0; n < length; n++) {
                    upTo[n + 1] = upTo[n] + values[first + n * stride];
                }
                for (int n = 0; n < length; n++) {
                    values[first + n * stride] = (float) (upTo[Math.min(length, n + reach + 1)]
                            - upTo[Math.max(0, n - reach)]);
                }
            }
        }
    }
}
