package slackwater.backend.cpu;

/** Bounce-back and the law of the wall on cells that are treated together, in place. */
interface WallSweep {
    /**
     * Treats cells [from, to) of a list and notes the stress rho u_tau^2 of each there.
     *
     * @param f all populations, as deviations from the weights
     * @param base where direction i of cell 0 is read in the step that follows
     * @param other where it is read in the step after that: there the step before has left what bounces back
     * @param room this thread's, from {@link WallCells#room}
     */
    void slide(float[] f, int[] base, int[] other, WallList cells, int from, int to, WallRoom room);

    /** Whether cells that are treated together must lie side by side. */
    boolean rows();

    /** Work for one cell, roughly, where the sweep of a cell is 1. */
    double work();
}
