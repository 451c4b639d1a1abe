package slackwater.viewer.shape;

import slackwater.field.FlowStatistics;
import slackwater.field.Grid;

/**
 * A velocity between the centres of its cells: trilinear, from cells of water only, as {@code field.Interpolation} has
 * it, but quick enough for thousands of points a picture.
 *
 * @param grid the cells
 * @param fluid true where there is water
 * @param u velocity along x, metres per second, one value a cell (v along y, w along z)
 */
public record Current(Grid grid, boolean[] fluid, float[] u, float[] v, float[] w) {
    /** The mean flow. */
    public static Current of(FlowStatistics flow) {
        return new Current(flow.grid(), flow.fluid(), flow.meanU(), flow.meanV(), flow.meanW());
    }

    /** Whether a place lies in a cell of water, metres. */
    public boolean isWater(double x, double y, double z) {
        double h = grid.cellSizeM();
        int i = (int) Math.floor(x / h);
        int j = (int) Math.floor(y / h);
        int k = (int) Math.floor(z / h);
        return i >= 0 && j >= 0 && k >= 0 && i < grid.nx() && j < grid.ny() && k < grid.nz()
                && fluid[grid.index(i, j, k)];
    }

    /**
     * The velocity at a place into the first three of an array, metres per second.
     *
     * @return false, and zeros, where none of the eight cells about it is water
     */
    public boolean at(double x, double y, double z, double[] into) {
        double h = grid.cellSizeM();
        double fx = x / h - 0.5;
        double fy = y / h - 0.5;
        double fz = z / h - 0.5;
        int i = (int) Math.floor(fx);
        int j = (int) Math.floor(fy);
        int k = (int) Math.floor(fz);
        double weights = 0;
        double sumU = 0;
        double sumV = 0;
        double sumW = 0;
        for (int n = 0; n < 8; n++) {
            int cell = grid.index(within(i + (n & 1), grid.nx()), within(j + (n >> 1 & 1), grid.ny()),
                    within(k + (n >> 2), grid.nz()));
            if (fluid[cell]) {
                double weight = share(n & 1, fx - i) * share(n >> 1 & 1, fy - j) * share(n >> 2, fz - k);
                weights += weight;
                sumU += weight * u[cell];
                sumV += weight * v[cell];
                sumW += weight * w[cell];
            }
        }
        double scale = weights > 0 ? 1 / weights : 0;
        into[0] = sumU * scale;
        into[1] = sumV * scale;
        into[2] = sumW * scale;
        return weights > 0;
    }

    private static int within(int index, int count) {
        return Math.max(0, Math.min(count - 1, index));
    }

    private static double share(int upper, double fraction) {
        return upper == 1 ? fraction : 1 - fraction;
    }
}
