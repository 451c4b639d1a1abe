package slackwater.analysis;

import java.util.Arrays;
import slackwater.field.Grid;

/** Averages over the water of fine cells that shares a coarse cell, each fine cell by the volume it shares. */
final class Coarsening {
    private final Grid fine;
    private final Grid coarse;
    private final boolean[] fluid;
    /** Water in each coarse cell, as a share of it. */
    private final double[] water;

    Coarsening(Grid fine, boolean[] fluid, Grid coarse) {
        this.fine = fine;
        this.fluid = fluid;
        this.coarse = coarse;
        this.water = new double[coarse.cells()];
        float[] ones = new float[fine.cells()];
        Arrays.fill(ones, 1);
        gather(ones, water);
    }

    /** Whether at least half of a coarse cell is water on the fine grid. */
    boolean isWater(int coarseCell) {
        return water[coarseCell] >= 0.5;
    }

    /** The averages, one a coarse cell; 0 where there is no water. */
    double[] of(float[] values) {
        double[] mean = new double[coarse.cells()];
        gather(values, mean);
        for (int cell = 0; cell < mean.length; cell++) {
            mean[cell] = water[cell] == 0 ? 0 : mean[cell] / water[cell];
        }
        return mean;
    }

    private void gather(float[] values, double[] sums) {
        for (int k = 0; k < fine.nz(); k++) {
            for (int j = 0; j < fine.ny(); j++) {
                for (int i = 0; i < fine.nx(); i++) {
                    int cell = fine.index(i, j, k);
                    if (fluid[cell]) {
                        share(new int[] {i, j, k}, values[cell], sums);
                    }
                }
            }
        }
    }

    /** Deals a fine cell's value out to the up to eight coarse cells that it lies in. */
    private void share(int[] at, float value, double[] sums) {
        int[] count = {coarse.nx(), coarse.ny(), coarse.nz()};
        int[] to = new int[3];
        double ratio = coarse.cellSizeM() / fine.cellSizeM();
        for (int corner = 0; corner < 8; corner++) {
            double volume = 1 / (ratio * ratio * ratio);
            for (int axis = 0; axis < 3; axis++) {
                int low = (int) Math.floor(at[axis] / ratio + 1e-9);
                double inLow = Math.min(1, (low + 1) * ratio - at[axis]);
                int step = corner >> axis & 1;
                to[axis] = low + step;
                volume *= to[axis] >= count[axis] ? 0 : step == 0 ? inLow : 1 - inLow;
            }
            if (volume > 0) {
                sums[coarse.index(to[0], to[1], to[2])] += volume * value;
            }
        }
    }
}
