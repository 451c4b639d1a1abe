package slackwater.lattice;

/**
 * How populations relax at a cell, as data: each back end maps it once to its own kernel. Lattice units.
 */
public sealed interface CollisionOperator {
    /** Relaxation time of the resolved viscosity, above 1/2: nu = (tau - 1/2)/3. */
    double relaxationTime();

    /** Smagorinsky constant Cs of the eddy viscosity (Cs |S|), 0 for none. Source: [Hou1996]. */
    double smagorinsky();

    /** Single relaxation time, second-order equilibrium. Source: [Qian1992]. */
    record Bgk(double relaxationTime, double smagorinsky) implements CollisionOperator {
        public Bgk {
            requireSane(relaxationTime, smagorinsky);
        }
    }

    private static void requireSane(double relaxationTime, double smagorinsky) {
        if (!(relaxationTime > 0.5)) {
            throw new IllegalArgumentException("relaxation time " + relaxationTime + " must be above 1/2");
        }
        if (!(smagorinsky >= 0 && smagorinsky <= 1)) {
            throw new IllegalArgumentException("Smagorinsky constant " + smagorinsky + " must be 0 to 1");
        }
    }
}
