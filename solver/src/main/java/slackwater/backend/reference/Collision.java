package slackwater.backend.reference;

import slackwater.backend.Equilibrium;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.CollisionOperator.RecursiveRegularised;
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

    /** Replaces the populations (deviations from the weights) of one cell by those after the collision. */
    void collide(double[] f) {
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
        double omega = 1 / effectiveRelaxationTime(density);
        if (operator instanceof Bgk) {
            for (int i = 0; i < VelocitySet.Q; i++) {
                f[i] += omega * (Equilibrium.deviation(i, deviation, u[0], u[1], u[2]) - f[i]);
            }
        } else if (operator instanceof RecursiveRegularised) {
            regularise(f, deviation, 1 - omega);
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
    private double effectiveRelaxationTime(double density) {
        double contraction = 0;
        for (double[] row : stress) {
            for (double value : row) {
                contraction += value * value;
            }
        }
        double tau = operator.relaxationTime();
        double cs = operator.smagorinsky();
        return 0.5 * (tau + Math.sqrt(tau * tau + 18 * Math.sqrt(2) * cs * cs * Math.sqrt(contraction) / density));
    }

    /** f = w (sum of Hermite polynomials to third order), the non-equilibrium part kept by a share. */
    private void regularise(double[] f, double deviation, double keep) {
        double density = 1 + deviation;
        for (int i = 0; i < VelocitySet.Q; i++) {
            double series = deviation;
            for (int a = 0; a < 3; a++) {
                series += c(i, a) / CS2 * density * u[a];
                for (int b = 0; b < 3; b++) {
                    double moment = density * u[a] * u[b] + keep * stress[a][b];
                    series += moment * (c(i, a) * c(i, b) - delta(a, b) * CS2) / (2 * CS2 * CS2);
                }
            }
            for (int a = 0; a < 3; a++) {
                int b = (a + 1) % 3;
                int d = (a + 2) % 3;
                double plus = c(i, a) * (c(i, b) * c(i, b) + c(i, d) * c(i, d) - 2 * CS2);
                double minus = c(i, a) * (c(i, b) * c(i, b) - c(i, d) * c(i, d));
                double abb = thirdMoment(density, keep, a, b);
                double add = thirdMoment(density, keep, a, d);
                series += (abb + add) * plus / (2 * CS2 * CS2 * CS2) + (abb - add) * minus / (6 * CS2 * CS2 * CS2);
            }
            f[i] = VelocitySet.weight(i) * series;
        }
    }

    /** Third moment a_abb: equilibrium rho u_a u_b^2 and, by recursion, the share kept of 2 u_b P_ab + u_a P_bb. */
    private double thirdMoment(double density, double keep, int a, int b) {
        return density * u[a] * u[b] * u[b] + keep * (2 * u[b] * stress[a][b] + u[a] * stress[b][b]);
    }

    private static double delta(int a, int b) {
        return a == b ? 1 : 0;
    }

    private static double c(int i, int axis) {
        return axis == 0 ? VelocitySet.cx(i) : axis == 1 ? VelocitySet.cy(i) : VelocitySet.cz(i);
    }
}
