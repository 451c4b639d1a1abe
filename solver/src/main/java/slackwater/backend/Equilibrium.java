package slackwater.backend;

import slackwater.lattice.VelocitySet;

/** The second-order equilibrium of D3Q27. Source: [Qian1992]. */
public final class Equilibrium {
    private Equilibrium() {
    }

    /** Population of a direction less its weight, for density 1 + deviation and velocity (ux, uy, uz). */
    public static double deviation(int i, double densityDeviation, double ux, double uy, double uz) {
        double cu = VelocitySet.cx(i) * ux + VelocitySet.cy(i) * uy + VelocitySet.cz(i) * uz;
        double uu = ux * ux + uy * uy + uz * uz;
        return VelocitySet.weight(i)
                * (densityDeviation + (1 + densityDeviation) * (3 * cu + 4.5 * cu * cu - 1.5 * uu));
    }
}
