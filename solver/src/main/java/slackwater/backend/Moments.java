package slackwater.backend;

/**
 * Density and velocity of every cell, lattice units, x fastest. Solid cells hold 0.
 *
 * @param densityDeviation density less 1
 * @param ux velocity along x in cells a step, half a step's force included (uy, uz likewise)
 */
public record Moments(float[] densityDeviation, float[] ux, float[] uy, float[] uz) {
    public Moments(int cells) {
        this(new float[cells], new float[cells], new float[cells], new float[cells]);
    }

    public int cells() {
        return ux.length;
    }
}
