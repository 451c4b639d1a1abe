package slackwater.lattice;

import java.util.Arrays;

/**
 * A force on some cells; lattice units.
 *
 * @param cells indices of the fluid cells it acts on, x fastest
 * @param weights share of each cell, sum 1
 * @param fx total force along x: momentum put in a step (fy, fz likewise)
 * @param fluctuation r.m.s. of the random part at each cell as a share of the local force; its sum over the cells is 0
 * @param correlationSteps how long the random part remembers itself
 * @param modulation change with time
 */
public record BodyForce(int[] cells, float[] weights, double fx, double fy, double fz, double fluctuation,
                        double correlationSteps, Modulation modulation) {
    public BodyForce {
        requireWeights(cells, weights);
    }

    /** The same steady force on every one of the cells. */
    public static BodyForce uniform(int[] cells, double fxPerCell, double fyPerCell, double fzPerCell) {
        int n = cells.length;
        float[] weights = new float[n];
        Arrays.fill(weights, 1f / n);
        return new BodyForce(cells, weights, n * fxPerCell, n * fyPerCell, n * fzPerCell, 0, 1,
                new Modulation.Steady());
    }

    static void requireWeights(int[] cells, float[] weights) {
        double sum = 0;
        for (float weight : weights) {
            sum += weight;
        }
        if (cells.length == 0 || cells.length != weights.length || Math.abs(sum - 1) > 1e-3) {
            throw new IllegalArgumentException(cells.length + " cells with weights that sum to " + sum
                    + ": there must be a weight for each cell and their sum must be 1");
        }
    }
}
