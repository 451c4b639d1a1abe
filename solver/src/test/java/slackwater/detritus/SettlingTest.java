package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.Test;

/**
 * Formulas against worked values: Ferguson and Church 2004, J. Sediment. Res. 74:933, and Soulsby 1997, Dynamics of
 * Marine Sands, eq. 102 and 77, computed from the formulas as transcribed by others and rounded to what is shown here.
 */
class SettlingTest {
    /** Water of viscosity 1e-6 m2/s, quartz (R 1.65): diameter in mm, both speeds in mm/s. */
    @ParameterizedTest
    @CsvSource({"0.0625, 3.206, 3.171", "0.125, 11.06, 11.94", "0.25, 31.84, 35.78", "0.5, 71.05, 73.72",
        "1, 126.3, 120.4", "2, 196.4, 179.2"})
    void quartzInFreshWater(double sizeMm, double ferguson, double soulsby) {
        assertEquals(ferguson, 1000 * Settling.fergusonChurch(sizeMm / 1000, 1.65, 1e-6), 0.001 * ferguson);
        assertEquals(soulsby, 1000 * Settling.soulsby(sizeMm / 1000, 1.65, 1e-6), 0.001 * soulsby);
    }

    /** Seawater of 25 degrees C and 35: mm, kg/m3, settling in mm/s (rounded), D*, Shields parameter, stress in Pa. */
    @ParameterizedTest
    @CsvSource({"0.1, 2650, 7.7, 2.61, 0.0754, 0.120", "0.2, 2650, 23.5, 5.22, 0.0468, 0.149",
        "0.5, 2650, 70.8, 13.05, 0.0306, 0.245", "1, 2650, 125, 26.1, 0.0316, 0.505",
        "2, 2650, 193, 52.2, 0.0403, 1.288", "0.1, 2830, 8.5, 2.70, 0.0736, 0.131",
        "0.2, 2830, 25.6, 5.40, 0.0457, 0.162", "0.5, 2830, 75.8, 13.5, 0.0305, 0.270",
        "1, 2830, 132, 27.0, 0.0319, 0.566", "2, 2830, 204, 54.0, 0.0409, 1.450",
        "0.5, 1850, 45, 10.4, 0.0326, 0.132", "1, 1850, 84, 20.8, 0.0303, 0.246"})
    void grainsInSeawater(double sizeMm, double density, double settling, double size, double shields, double stress) {
        double sizeM = sizeMm / 1000;
        double excess = density / 1023.34 - 1;
        assertEquals(settling, 1000 * Settling.mPerS(sizeM, density), 0.007 * settling);
        assertEquals(size, Shields.dimensionless(sizeM, excess, 0.937e-6), 0.005 * size);
        assertEquals(shields, Shields.threshold(Shields.dimensionless(sizeM, excess, 0.937e-6)), 0.005 * shields);
        assertEquals(stress, Shields.criticalPa(sizeM, density), 0.005 * stress);
    }

    /**
     * Stokes 1851: w = R g d^2/(18 nu) for fine grains, here of a particle Reynolds number below 0.01. Soulsby's
     * constants make it R g d^2/(19.75 nu): that formula is for natural grains and 9 % slow here.
     */
    @Test
    void fineGrainsObeyStokes() {
        double stokes = 1.65 * 9.81 * 1e-10 / (18 * 1e-6);
        assertEquals(stokes, Settling.fergusonChurch(1e-5, 1.65, 1e-6), 0.02 * stokes);
        assertEquals(18 / 19.75 * stokes, Settling.soulsby(1e-5, 1.65, 1e-6), 0.01 * stokes);
    }
}
