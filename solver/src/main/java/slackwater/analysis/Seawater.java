package slackwater.analysis;

/**
 * The water's properties that the assessment needs: seawater of 25 degrees C and salinity 35 g/kg.
 * Density: UNESCO EOS-80 (Millero and Poisson 1981); viscosity: Sharqawy, Lienhard and Zubair 2010,
 * Desalination and Water Treatment 16:354.
 */
final class Seawater {
    static final double DENSITY_KG_PER_M3 = 1023.34;
    static final double KINEMATIC_VISCOSITY_M2_PER_S = 0.937e-6;
    static final double GRAVITY_M_PER_S2 = 9.81;

    private Seawater() {
    }
}
