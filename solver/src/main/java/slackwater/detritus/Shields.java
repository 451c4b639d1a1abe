package slackwater.detritus;

import slackwater.units.Seawater;

/**
 * When a bed of like grains begins to move, [Soulsby1997] eq. 77 (Soulsby and Whitehouse 1997). The data scatter 20 to
 * 30 % about the curve.
 */
public final class Shields {
    private Shields() {
    }

    /** The grain's size as a number, D* = d (g (s - 1)/nu^2)^(1/3). */
    static double dimensionless(double sizeM, double excess, double viscosityM2PerS) {
        return sizeM * Math.cbrt(Settling.GRAVITY_M_PER_S2 * excess / (viscosityM2PerS * viscosityM2PerS));
    }

    /** Threshold Shields parameter of a dimensionless size. */
    static double threshold(double dimensionlessSize) {
        return 0.30 / (1 + 1.2 * dimensionlessSize) + 0.055 * (1 - Math.exp(-0.020 * dimensionlessSize));
    }

    /**
     * The shear stress at which such a bed begins to move in seawater, pascals.
     *
     * @param sizeM median diameter, metres, above 0
     * @param densityKgPerM3 of the grains, above that of the water
     */
    public static double criticalPa(double sizeM, double densityKgPerM3) {
        double excess = densityKgPerM3 / Seawater.DENSITY_KG_PER_M3 - 1;
        double size = dimensionless(sizeM, excess, Seawater.KINEMATIC_VISCOSITY_M2_PER_S);
        return threshold(size) * Settling.GRAVITY_M_PER_S2
                * (densityKgPerM3 - Seawater.DENSITY_KG_PER_M3) * sizeM;
    }
}
