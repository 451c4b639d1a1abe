package slackwater.backend.cpu;

/** The law of the wall on a row of cells that touch walls in the same way, in place. */
interface WallSweep {
    /**
     * Treats a row of cells, each a {@link #step} from the next; after the links.
     *
     * @param f all populations, as deviations from the weights
     * @param base where direction i of cell 0 is read in the step that follows
     * @param at first cell of the row
     * @param stress where the row's stresses rho u_tau^2 go, from an index on
     * @param room this thread's, from {@link WallCells#room}
     */
    void slide(float[] f, int[] base, int at, int length, float[] stress, int from, float[] room);

    /** Distance in the array from a cell of a row to the next. */
    int step();

    /** Work for one cell with its links, roughly, where the sweep of a cell is 1. */
    double work();
}
