package slackwater.viewer.shape;

import slackwater.field.Grid;

/** A field of the water carried on into the solid cells beside it, so that surfaces in it end on rock and sand. */
public final class Soaked {
    private Soaked() {
    }

    /**
     * The values in the water as they are; in each solid cell the mean of the cells of water about it (of 26), 0 where
     * there is none.
     */
    public static float[] of(Grid grid, boolean[] fluid, float[] values) {
        float[] soaked = new float[values.length];
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    int cell = grid.index(i, j, k);
                    soaked[cell] = fluid[cell] ? values[cell] : mean(grid, fluid, values, new int[] {i, j, k});
                }
            }
        }
        return soaked;
    }

    private static float mean(Grid grid, boolean[] fluid, float[] values, int[] at) {
        float sum = 0;
        int water = 0;
        for (int k = Math.max(0, at[2] - 1); k <= Math.min(grid.nz() - 1, at[2] + 1); k++) {
            for (int j = Math.max(0, at[1] - 1); j <= Math.min(grid.ny() - 1, at[1] + 1); j++) {
                for (int i = Math.max(0, at[0] - 1); i <= Math.min(grid.nx() - 1, at[0] + 1); i++) {
                    int cell = grid.index(i, j, k);
                    if (fluid[cell]) {
                        sum += values[cell];
                        water++;
                    }
                }
            }
        }
        return water == 0 ? 0 : sum / water;
    }
}
