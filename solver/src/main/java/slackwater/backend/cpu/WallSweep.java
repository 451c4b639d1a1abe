package slackwater.backend.cpu;

/** The law of the wall on cells that are treated together, in place. */
interface WallSweep {
    /**
     * Treats cells [from, to) of a list, after the links, and notes the stress rho u_tau^2 of each there.
     *
     * @param f all populations, as deviations from the weights
     * @param base where direction i of cell 0 is read in the step that follows
     * @param room this thread's, from {@link WallCells#room}
     */
    void slide(float[] f, int[] base, WallList cells, int from, int to, float[] room);

    /** Whether cells that are treated together must lie side by side. */
    boolean rows();

    /** Work for one cell without its links, roughly, where the sweep of a cell is 1. */
    double work();
}
