package slackwater.detritus;

import slackwater.field.Grid;

/**
 * Which faces the flow in a cell is read from. Ten bits for each axis: whether the face towards smaller values is open,
 * that is has water on both sides, and if so the four beside it: ahead and behind along one of the other axes, ahead
 * and behind along the other; then five for the face towards greater values.
 */
final class Openings {
    /** So many bits for each of the two faces across an axis. */
    static final int FACES = 5;

    private final int[] bits;

    /** @param fluid true where there is water, x fastest */
    Openings(Grid grid, boolean[] fluid) {
        int nx = grid.nx() + 2;
        int layer = nx * (grid.ny() + 2);
        boolean[] water = new boolean[layer * (grid.nz() + 2)];
        bits = new int[grid.cells()];
        for (int cell = 0; cell < bits.length; cell++) {
            water[padded(grid, cell)] = fluid[cell];
        }
        for (int cell = 0; cell < bits.length; cell++) {
            int at = padded(grid, cell);
            if (water[at]) {
                bits[cell] = across(water, at, 1, nx, layer) | across(water, at, nx, 1, layer) << 2 * FACES
                        | across(water, at, layer, 1, nx) << 4 * FACES;
            }
        }
    }

    /** Index in a grid with one more cell at every side, so that each cell has neighbours. */
    static int padded(Grid grid, int cell) {
        int i = cell % grid.nx();
        int row = cell / grid.nx();
        int j = row % grid.ny();
        int k = row / grid.ny();
        return ((k + 1) * (grid.ny() + 2) + j + 1) * (grid.nx() + 2) + i + 1;
    }

    private static int across(boolean[] water, int at, int step, int one, int other) {
        return face(water, at, step, one, other) | face(water, at + step, step, one, other) << FACES;
    }

    private static int face(boolean[] water, int at, int step, int one, int other) {
        return !isOpen(water, at, step) ? 0 : 1 + (isOpen(water, at + one, step) ? 2 : 0)
                + (isOpen(water, at - one, step) ? 4 : 0) + (isOpen(water, at + other, step) ? 8 : 0)
                + (isOpen(water, at - other, step) ? 16 : 0);
    }

    private static boolean isOpen(boolean[] water, int at, int step) {
        return water[at] && water[at - step];
    }

    /** The bits of a cell, those across x lowest; 0 in rock. */
    int of(int cell) {
        return bits[cell];
    }
}
