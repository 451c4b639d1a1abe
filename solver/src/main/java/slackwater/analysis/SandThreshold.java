package slackwater.analysis;

import slackwater.detritus.Shields;
import slackwater.units.Seawater;

/**
 * The speed at which sand begins to move: threshold Shields number after Soulsby and Whitehouse 1997 (Pacific Coasts
 * and Ports 97, 1:149), carried up by the law of the wall. Data scatter 20 to 30 % about the curve. Grains are taken
 * as solid aragonite, 2830 kg/m3; light, platy skeletal grains move at 0.5 to 0.8 of this stress (Prager, Southard and
 * Vivoni-Gallart 1996, Sedimentology 43:33).
 *
 * @param grainM median grain diameter, metres
 * @param shearStressPa bed shear stress at the threshold, pascals
 * @param frictionVelocityMPerS friction velocity at the threshold, metres per second
 */
public record SandThreshold(double grainM, double shearStressPa, double frictionVelocityMPerS) {
    static final double ARAGONITE_KG_PER_M3 = 2830;
    private static final double KARMAN = 0.40;

    /** @throws IllegalArgumentException if the grain is not above zero */
    public static SandThreshold ofAragonite(double grainM) {
        return of(grainM, ARAGONITE_KG_PER_M3);
    }

    static SandThreshold of(double grainM, double grainDensityKgPerM3) {
        if (!(grainM > 0)) {
            throw new IllegalArgumentException("a sand grain must be above 0 mm, found " + grainM * 1000);
        }
        double stress = Shields.criticalPa(grainM, grainDensityKgPerM3);
        return new SandThreshold(grainM, stress, Math.sqrt(stress / Seawater.DENSITY_KG_PER_M3));
    }

    /** Speed at the threshold at a height above the sand, metres per second: law of the wall, rough and smooth. */
    public double speedMPerS(double heightM) {
        double roughness = 2.5 * grainM / 30 + Seawater.KINEMATIC_VISCOSITY_M2_PER_S / (9 * frictionVelocityMPerS);
        return frictionVelocityMPerS / KARMAN * Math.log(heightM / roughness);
    }
}
