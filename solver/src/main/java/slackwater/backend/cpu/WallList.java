package slackwater.backend.cpu;

import java.util.Arrays;

/** Cells at walls: where each lies, how it touches walls, and the stress that it met last. */
final class WallList {
    /** Cells of a block, and kinds of wall, are fewer than 2 to these powers. */
    private static final int CELL_BITS = 24;
    private static final int KIND_BITS = 20;

    private int[] cell = new int[256];
    private int[] place = new int[256];
    private int[] kind = new int[256];
    private int[] turned = new int[256];
    private float[] stress = new float[0];
    private int count;

    /**
     * @param index in the problem
     * @param at in the array, as in the layout
     * @param wall number of its kind of wall
     * @param directions in which the cell gets back what it sent out, as bits
     */
    void add(int index, int at, int wall, int directions) {
        if (count == cell.length) {
            cell = Arrays.copyOf(cell, 2 * count);
            place = Arrays.copyOf(place, 2 * count);
            kind = Arrays.copyOf(kind, 2 * count);
            turned = Arrays.copyOf(turned, 2 * count);
        }
        cell[count] = index;
        place[count] = at;
        turned[count] = directions;
        kind[count++] = wall;
    }

    /** Ends the adding. */
    void close() {
        stress = new float[count];
    }

    int count() {
        return count;
    }

    int place(int n) {
        return place[n];
    }

    /** The places of all. Not to be written. */
    int[] places() {
        return place;
    }

    int kind(int n) {
        return kind[n];
    }

    /** Directions in which each gets back what it sent out, as bits. Not to be written. */
    int[] turned() {
        return turned;
    }

    /** rho u_tau^2 of every cell, to be written to. */
    float[] stress() {
        return stress;
    }

    /**
     * Brings cells [from, to) into the order of what treats their kinds, and then of kinds, so that those of a vector
     * turn few directions round between them; otherwise as they lie.
     */
    void sort(int from, int to, int[] treatment) {
        long[] keys = new long[to - from];
        for (int n = from; n < to; n++) {
            keys[n - from] = ((long) treatment[kind[n]] << KIND_BITS | kind[n]) << CELL_BITS | n - from;
        }
        Arrays.sort(keys);
        int[] oldCell = Arrays.copyOfRange(cell, from, to);
        int[] oldPlace = Arrays.copyOfRange(place, from, to);
        int[] oldKind = Arrays.copyOfRange(kind, from, to);
        int[] oldTurned = Arrays.copyOfRange(turned, from, to);
        for (int n = from; n < to; n++) {
            int old = (int) keys[n - from] & (1 << CELL_BITS) - 1;
            cell[n] = oldCell[old];
            place[n] = oldPlace[old];
            kind[n] = oldKind[old];
            turned[n] = oldTurned[old];
        }
    }

    /** No stress, as before the first step. */
    void clear() {
        Arrays.fill(stress, 0);
    }

    /** Writes the stress of each of its cells into a field, x fastest. */
    void readStress(float[] target) {
        for (int n = 0; n < count; n++) {
            target[cell[n]] = stress[n];
        }
    }
}
