package slackwater.backend;

import slackwater.lattice.VelocitySet;

/**
 * A flow as it stands between two steps: enough to go on from there, but for the random part of the jets, which begins
 * anew.
 *
 * @param step steps taken so far
 * @param deviations the arriving populations less their weights; direction i of a cell at {@code i * cells + cell},
 *     cells as in the problem; 0 in solid cells, which is water at rest
 */
public record FlowState(long step, float[] deviations) {
    public int cells() {
        return deviations.length / VelocitySet.Q;
    }

    /** @throws IllegalArgumentException if it is of another number of cells */
    public void requireCells(int cells) {
        if (cells() != cells) {
            throw new IllegalArgumentException("a state of " + cells() + " cells for a problem of " + cells);
        }
    }

    /**
     * The same flow for steps of another length: velocities grow with the step, pressures with its square, and what the
     * populations are off their equilibrium with the strain in a step, to first order in the Mach number.
     *
     * @param longer length of a new step over that of an old one, above 0
     */
    public FlowState scaled(double longer) {
        float[] scaled = new float[deviations.length];
        int cells = cells();
        for (int cell = 0; cell < cells; cell++) {
            double density = 0;
            double jx = 0;
            double jy = 0;
            double jz = 0;
            for (int i = 0; i < VelocitySet.Q; i++) {
                double f = deviations[i * cells + cell];
                density += f;
                jx += f * VelocitySet.cx(i);
                jy += f * VelocitySet.cy(i);
                jz += f * VelocitySet.cz(i);
            }
            double ux = jx / (1 + density);
            double uy = jy / (1 + density);
            double uz = jz / (1 + density);
            for (int i = 0; i < VelocitySet.Q; i++) {
                double off = deviations[i * cells + cell] - Equilibrium.deviation(i, density, ux, uy, uz);
                scaled[i * cells + cell] = (float) (Equilibrium.deviation(i, density * longer * longer, ux * longer,
                        uy * longer, uz * longer) + longer * off);
            }
        }
        return new FlowState(Math.round(step / longer), scaled);
    }
}
