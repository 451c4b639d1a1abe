package slackwater.lattice;

/**
 * Water that enters (rate above 0, at rest) or leaves (rate below 0, with the velocity it has) at some cells.
 *
 * @param cells indices of the fluid cells, x fastest
 * @param weights share of each cell, sum 1
 * @param rate mass a step, lattice units: volume in cells a step
 */
public record MassSource(int[] cells, float[] weights, double rate) {
    public MassSource {
        BodyForce.requireWeights(cells, weights);
    }
}
