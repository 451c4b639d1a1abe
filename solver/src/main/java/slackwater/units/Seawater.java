package slackwater.units;

/**
 * Seawater as a reef tank holds it: 25 degrees C, practical salinity 35, one atmosphere.
 *
 * <p>Sources: density by the equation of state EOS-80 (Fofonoff and Millard 1983, UNESCO technical papers in marine
 * science 44; accuracy 0.0036 kg/m3); viscosity by Sharqawy, Lienhard and Zubair 2010, Desalination and Water
 * Treatment 16, 354-380, eq. 22 and 23 (accuracy 1.5 %).
 */
public final class Seawater {
    /** Kilograms per cubic metre. */
    public static final double DENSITY_KG_PER_M3 = 1023.34;

    /** Square metres per second. */
    public static final double KINEMATIC_VISCOSITY_M2_PER_S = 0.937e-6;

    private Seawater() {
    }
}
