package slackwater.backend.reference;

import slackwater.backend.Equilibrium;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.VelocitySet;

/** Relaxation of the populations of one cell, written with tensors as in the papers. */
final class Collision {
    private static final double CS2 = VelocitySet.SOUND_SPEED_SQUARED;

    private final CollisionOperator operator;
    private final double[] u = new double[3];
    private final double[][] stress = new double[3][3];

    Collision(CollisionOperator operator) {
        this.operator = operator;
    }

    /**
     * Replaces the populations (deviations from the weights) of one cell by those after the collision.
     *
     * @param mixingLength of the eddy viscosity in that cell, in cells
     */
    void collide(double[] f, double mixingLength) {
        double deviation = 0;
        u[0] = u[1] = u[2] = 0;
        for (int i = 0; i < VelocitySet.Q; i++) {
            deviation += f[i];
            for (int a = 0; a < 3; a++) {
                u[a] += f[i] * c(i, a);
            }
        }
        double density = 1 + deviation;
        for (int a = 0; a < 3; a++) {
            u[a] /= density;
        }
        nonEquilibriumStress(f, deviation);
        double omega = 1 / effectiveRelaxationTime(density, mixingLength);
        for (int i = 0; i < VelocitySet.Q; i++) {
            f[i] += omega * (Equilibrium.deviation(i, deviation, u[0], u[1], u[2]) - f[i]);
        }
    }

    /** Second moments of f - f_eq. */
    private void nonEquilibriumStress(double[] f, double deviation) {
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                double sum = 0;
                for (int i = 0; i < VelocitySet.Q; i++) {
                    sum += f[i] * c(i, a) * c(i, b);
                }
                stress[a][b] = sum - delta(a, b) * CS2 * deviation - (1 + deviation) * u[a] * u[b];
            }
        }
    }

    /** Relaxation time with the Smagorinsky eddy viscosity, [Hou1996]. */
    private double effectiveRelaxationTime(double density, double length) {
        double contraction = 0;
        for (double[] row : stress) {
            for (double value : row) {
                contraction += value * value;
            }
        }
        double tau = operator.relaxationTime();
        double eddy = 18 * Math.sqrt(2) * length * length;
        return 0.5 * (tau + Math.sqrt(tau * tau + eddy * Math.sqrt(contraction) / density));
    }

    private static double delta(int a, int b) {
        return a == b ? 1 : 0;
    }

    private static double c(int i, int axis) {
        return axis == 0 ? VelocitySet.cx(i) : axis == 1 ? VelocitySet.cy(i) : VelocitySet.cz(i);
    }
}
