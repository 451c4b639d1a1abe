package slackwater.backend.cpu;

/** The law of the wall on a row of cells that touch walls in the same way, in place. */
interface WallSweep {
    /**
     * Treats a row of neighbours along x; after the links.
     *
     * @param f all populations, as deviations from the weights
     * @param base where direction i of cell 0 is read in the step that follows
     * @param at first cell of the row
     * @param stress where the row's stresses rho u_tau^2 go, from an index on
     * @param room {@link FlatWallSweep#room} of this thread
     */
    void slide(float[] f, int[] base, int at, int length, float[] stress, int from, float[] room);
}
