package slackwater.backend.cpu;

import slackwater.lattice.VelocitySet;

/**
 * What a thread keeps while it treats cells at walls: a row of {@link #ROW} numbers of each kind, which the passes over
 * the cells hand on to each other.
 */
final class WallRoom {
    /** No more than this many cells are treated together: whole vectors of any machine. */
    static final int LONGEST_RUN = 64;
    /** Room for a run and a vector more. */
    static final int ROW = 2 * LONGEST_RUN;

    final float[] values;
    /** Where each direction of cell 0 is read, if what comes from a wall is to be read as it came back. */
    final int[] bases = new int[VelocitySet.Q];
    /** Places in an array, of a vector of cells. */
    final int[] places = new int[LONGEST_RUN];
    /** Where each speed is in the table of friction: on which step, how far along it, and its two ends. */
    final int[] steps = new int[ROW];
    final float[] part = new float[ROW];
    final float[] low = new float[ROW];
    final float[] high = new float[ROW];

    WallRoom(int rows) {
        values = new float[rows * ROW];
    }
}
