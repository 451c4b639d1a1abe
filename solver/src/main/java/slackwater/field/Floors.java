package slackwater.field;

import java.util.Arrays;

/**
 * The cells of water that lie on something.
 *
 * @param index for each cell its number among those with a floor, -1 for the others
 * @param count how many there are
 */
record Floors(Grid grid, boolean[] fluid, int[] index, int count) {
    static Floors of(Grid grid, boolean[] fluid) {
        int layer = grid.nx() * grid.ny();
        int[] index = new int[grid.cells()];
        Arrays.fill(index, -1);
        int count = 0;
        for (int cell = 0; cell < index.length; cell++) {
            if (fluid[cell] && (cell < layer || !fluid[cell - layer])) {
                index[cell] = count++;
            }
        }
        return new Floors(grid, fluid, index, count);
    }

    /** The values of the cells with a floor. */
    float[] of(float[] values) {
        float[] picked = new float[count];
        for (int cell = 0; cell < index.length; cell++) {
            if (index[cell] >= 0) {
                picked[index[cell]] = values[cell];
            }
        }
        return picked;
    }
}
