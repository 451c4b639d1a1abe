package slackwater.detritus;

import slackwater.units.Seawater;

/** How fast a single grain sinks in still water. */
public final class Settling {
    static final double GRAVITY_M_PER_S2 = 9.81;
    /** Of natural sand by its sieve diameter; C1 is Stokes' constant. Source: [Ferguson2004]. */
    private static final double C1 = 18;
    private static final double C2 = 1.0;
    /** Source: [Soulsby1997], eq. 102. */
    private static final double LAMINAR = 10.36;
    private static final double TURBULENT = 1.049;

    private Settling() {
    }

    /**
     * In seawater, by Ferguson and Church: from Stokes' law for fine grains to constant drag for coarse ones. Formulas
     * of this kind differ from each other by 10 to 15 %.
     *
     * @param sizeM sieve diameter, metres, above 0
     * @param densityKgPerM3 of the grain, at least that of the water
     * @return metres per second
     */
    public static double mPerS(double sizeM, double densityKgPerM3) {
        return fergusonChurch(sizeM, densityKgPerM3 / Seawater.DENSITY_KG_PER_M3 - 1,
                Seawater.KINEMATIC_VISCOSITY_M2_PER_S);
    }

    /** w = R g d^2 / (C1 nu + sqrt(0.75 C2 R g d^3)), [Ferguson2004]; R: grain's density over the water's, less 1. */
    static double fergusonChurch(double sizeM, double excess, double viscosityM2PerS) {
        double pull = excess * GRAVITY_M_PER_S2 * sizeM * sizeM;
        return pull / (C1 * viscosityM2PerS + Math.sqrt(0.75 * C2 * pull * sizeM));
    }

    /** w = nu/d (sqrt(10.36^2 + 1.049 D*^3) - 10.36), [Soulsby1997] eq. 102: a second opinion. */
    static double soulsby(double sizeM, double excess, double viscosityM2PerS) {
        double size = Shields.dimensionless(sizeM, excess, viscosityM2PerS);
        return viscosityM2PerS / sizeM
                * (Math.sqrt(LAMINAR * LAMINAR + TURBULENT * size * size * size) - LAMINAR);
    }
}
