package slackwater.backend.cpu;

/** The collision of a stretch of cells, in place. */
interface Sweep {
    /**
     * Collides the cells [from, to) and on to the end of the last vector.
     *
     * @param f all populations, as deviations from the weights
     * @param base where direction i of cell 0 is read; its result goes where the opposite direction was read
     */
    void collide(float[] f, int[] base, int from, int to);
}
