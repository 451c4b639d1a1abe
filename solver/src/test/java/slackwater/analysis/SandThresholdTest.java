package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Formula of Soulsby and Whitehouse 1997, Pacific Coasts and Ports 97, 1:149. The table was worked out from that
 * formula by other code for seawater of 25 degrees C and 35 g/kg; it is rounded to three figures, hence 1 %.
 */
class SandThresholdTest {
    private static final double ROUNDING = 0.01;

    @ParameterizedTest
    @CsvSource({
        "0.1, 2650, 0.120, 1.08, 21.5, 23.4", "0.2, 2650, 0.149, 1.21, 22.9, 25.0",
        "0.5, 2650, 0.245, 1.55, 26.8, 29.5", "1.0, 2650, 0.505, 2.22, 35.2, 39.1",
        "2.0, 2650, 1.288, 3.55, 50.4, 56.6", "0.1, 2830, 0.131, 1.13, 22.5, 24.4",
        "0.2, 2830, 0.162, 1.26, 23.9, 26.1", "0.5, 2830, 0.270, 1.62, 28.2, 31.0",
        "1.0, 2830, 0.566, 2.35, 37.3, 41.4", "2.0, 2830, 1.450, 3.76, 53.5, 60.0",
        "0.5, 1850, 0.132, 1.14, 19.6, 21.5", "1.0, 1850, 0.246, 1.55, 24.5, 27.2"})
    void agreesWithTheWorkedTable(double grainMm, double density, double stressPa, double frictionCmPerS, double at5Cm,
                                  double at10Cm) {
        SandThreshold threshold = SandThreshold.of(grainMm / 1000, density);
        assertEquals(stressPa, threshold.shearStressPa(), ROUNDING * stressPa);
        assertEquals(frictionCmPerS, threshold.frictionVelocityMPerS() * 100, ROUNDING * frictionCmPerS);
        assertEquals(at5Cm, threshold.speedMPerS(0.05) * 100, ROUNDING * at5Cm);
        assertEquals(at10Cm, threshold.speedMPerS(0.10) * 100, ROUNDING * at10Cm);
    }

    @Test
    void takesGrainsAsAragonite() {
        assertEquals(SandThreshold.of(0.0005, 2830), SandThreshold.ofAragonite(0.0005));
    }

    @Test
    void refusesNoGrain() {
        assertThrows(IllegalArgumentException.class, () -> SandThreshold.ofAragonite(0));
        assertThrows(IllegalArgumentException.class, () -> SandThreshold.ofAragonite(Double.NaN));
    }
}
