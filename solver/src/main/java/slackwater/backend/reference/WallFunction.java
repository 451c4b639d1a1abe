package slackwater.backend.reference;

import java.util.Arrays;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.VelocitySet;
import slackwater.lattice.WallFriction;

/**
 * The law of the wall on the populations of one cell, as docs/numerics.md has it: what plain bounce-back takes of the
 * momentum along the wall is given back, and the friction of the law is taken instead, by the slip velocity of a moving
 * wall that does just that. Source: inverse momentum exchange, [Asmuth2021].
 */
final class WallFunction {
    /** In all but 4 of 100 000 sets of links, the stiffness in a direction along the wall is 0 or at least this. */
    private static final double LEAST_STIFFNESS = 0.02;
    private static final double LEAST_AREA = 1e-6;
    private static final double ON_THE_PLANE = 1e-6;

    private final WallFriction friction;
    private final boolean[] turned = new boolean[VelocitySet.Q];
    private double roughDrag;
    private boolean touched;

    WallFunction(WallFriction friction) {
        this.friction = friction;
    }

    /** Begins a cell. */
    void clear() {
        Arrays.fill(turned, false);
        roughDrag = 0;
        touched = false;
    }

    /** This direction arrives from a wall of that law. */
    void add(int direction, LogLaw law) {
        turned[direction] = true;
        touched = true;
        roughDrag = Math.max(roughDrag, WallFriction.roughDrag(law));
    }

    /** Corrects what plain bounce-back left and returns the shear stress rho u_tau^2; 0 if there is no wall. */
    double apply(double[] f) {
        double[] n = area();
        double area = Math.sqrt(dot(n, n));
        if (!touched || area < LEAST_AREA) {
            return 0;
        }
        for (int a = 0; a < 3; a++) {
            n[a] /= area;
        }
        for (int i = 0; i < VelocitySet.Q; i++) {
            if (turned[i] && along(i, n) < -ON_THE_PLANE) {
                return 0;
            }
        }
        double density = 1;
        double[] exchange = new double[3];
        double[] free = new double[3];
        for (int i = 0; i < VelocitySet.Q; i++) {
            density += f[i];
            for (int a = 0; a < 3; a++) {
                exchange[a] += turned[i] ? 2 * f[i] * c(i, a) : 0;
                free[a] += f[i] * c(i, a) - (turned[i] ? 2 * f[i] * c(i, a) : 0);
            }
        }
        double outward = dot(free, n);
        for (int a = 0; a < 3; a++) {
            free[a] -= outward * n[a];
        }
        double speed = Math.sqrt(dot(free, free)) / density;
        double rate = friction.rate(speed, roughDrag);
        double[] change = new double[3];
        for (int a = 0; a < 3; a++) {
            change[a] = -rate * area * free[a] - exchange[a];
        }
        return slip(f, n, change) ? rate * density * speed : 0;
    }

    /**
     * Gives the cell this momentum, as far as it lies along the wall, by a slip velocity s: f_i += 6 w_i c_i.s. False
     * if no link can take momentum along the wall.
     */
    private boolean slip(double[] f, double[] n, double[] change) {
        boolean slides = false;
        for (double[] t : principalTangents(n)) {
            double stiffness = stiffness(t, t);
            if (stiffness >= LEAST_STIFFNESS) {
                slides = true;
                double s = dot(change, t) / stiffness;
                for (int i = 0; i < VelocitySet.Q; i++) {
                    f[i] += turned[i] ? 6 * VelocitySet.weight(i) * along(i, t) * s : 0;
                }
            }
        }
        return slides;
    }

    /** Two directions along the wall, at right angles, between which the stiffness has no cross term. */
    private double[][] principalTangents(double[] n) {
        double[] across = Math.abs(n[0]) < 0.6 ? new double[] {1, 0, 0} : new double[] {0, 1, 0};
        double[] t = cross(n, across);
        double length = Math.sqrt(dot(t, t));
        double[] one = {t[0] / length, t[1] / length, t[2] / length};
        double[] two = cross(n, one);
        double angle = 0.5 * Math.atan2(2 * stiffness(one, two), stiffness(one, one) - stiffness(two, two));
        double[][] tangents = new double[2][3];
        for (int a = 0; a < 3; a++) {
            tangents[0][a] = Math.cos(angle) * one[a] + Math.sin(angle) * two[a];
            tangents[1][a] = Math.cos(angle) * two[a] - Math.sin(angle) * one[a];
        }
        return tangents;
    }

    /** t.M.v of M = sum of 6 w_i c_i c_i over the links. */
    private double stiffness(double[] t, double[] v) {
        double sum = 0;
        for (int i = 0; i < VelocitySet.Q; i++) {
            sum += turned[i] ? 6 * VelocitySet.weight(i) * along(i, t) * along(i, v) : 0;
        }
        return sum;
    }

    /** Area of the wall times its normal, 6 sum of w_i c_i over the links: for a flat wall just the normal. */
    private double[] area() {
        double[] sum = new double[3];
        for (int i = 0; i < VelocitySet.Q; i++) {
            for (int a = 0; a < 3; a++) {
                sum[a] += turned[i] ? 6 * VelocitySet.weight(i) * c(i, a) : 0;
            }
        }
        return sum;
    }

    private static double along(int i, double[] t) {
        return c(i, 0) * t[0] + c(i, 1) * t[1] + c(i, 2) * t[2];
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double c(int i, int axis) {
        return axis == 0 ? VelocitySet.cx(i) : axis == 1 ? VelocitySet.cy(i) : VelocitySet.cz(i);
    }
}
