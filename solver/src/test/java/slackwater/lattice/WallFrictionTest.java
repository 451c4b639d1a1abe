package slackwater.lattice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.lattice.BoundaryCondition.LogLaw;

/** The law of the wall against the laws that it joins: Pope 2000, Turbulent Flows, section 7.1. */
class WallFrictionTest {
    private static final double VISCOSITY = 1e-5;

    /** u+ and y+ half a cell above a smooth wall at a speed. */
    private static double[] plus(double speed) {
        double frictionVelocity = Math.sqrt(speed * new WallFriction(VISCOSITY).rate(speed, 0));
        return new double[] {speed / frictionVelocity, frictionVelocity * 0.5 / VISCOSITY};
    }

    /** Viscous sublayer, y+ up to 2: u+ = y+ (Pope 2000, eq. 7.40). Spalding's other terms are 0.13 % of it there. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-12, 1e-7, 1e-5, 8e-5})
    void sublayer(double speed) {
        double rate = new WallFriction(VISCOSITY).rate(speed, 0);
        assertEquals(VISCOSITY / 0.5, rate, 0.002 * VISCOSITY / 0.5);
    }

    /**
     * Logarithmic layer: u+ = ln(y+)/0.41 + 5.2 (Pope 2000, eq. 7.43 and 7.44, for y+ above 30). Spalding's law goes
     * over into it slowly: its u+ and the cut-off terms of the exponential, 26 of 107 at y+ 107, are still worth
     * 1.04 % of u+ at y+ 100; at y+ 1000 they are worth 0.3 %.
     */
    @ParameterizedTest
    @CsvSource({"100, 0.011", "1000, 0.005", "1e5, 0.001"})
    void logarithmicLayer(double heightPlus, double tolerance) {
        double speedPlus = Math.log(heightPlus) / 0.41 + 5.2;
        double[] found = plus(speedPlus * heightPlus * VISCOSITY / 0.5);
        assertEquals(Math.log(found[1]) / 0.41 + 5.2, found[0], tolerance * found[0]);
        assertEquals(heightPlus, found[1], 2 * tolerance * heightPlus);
    }

    /**
     * Fully rough wall: u+ = ln(y/k_s)/kappa + 8.5 (Nikuradse 1933; Pope 2000, eq. 7.120, with kappa 0.41), the same as
     * a roughness length of k_s/30 up to ln(30)/0.41 = 8.30 against 8.5: 3 % of u+ half a cell above knobs of one cell,
     * less above finer ones.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1, 0.3, 0.05})
    void nikuradse(double knob) {
        double drag = WallFriction.roughDrag(new LogLaw(knob / 30));
        double speedPlus = Math.log(0.5 / knob) / 0.41 + 8.5;
        assertEquals(speedPlus, 1 / Math.sqrt(drag), 0.031 * speedPlus);
    }

    /** Knobs within the sublayer, k_s+ below 5, are not felt (Pope 2000, section 7.2.2): the wall is smooth. */
    @Test
    void aWallTakesTheLargerFriction() {
        WallFriction law = new WallFriction(VISCOSITY);
        double speed = 0.01;
        double frictionVelocity = Math.sqrt(speed * law.rate(speed, 0));
        double fine = WallFriction.roughDrag(new LogLaw(2 * VISCOSITY / frictionVelocity / 30));
        double coarse = WallFriction.roughDrag(new LogLaw(1.0 / 30));
        assertEquals(law.rate(speed, 0), law.rate(speed, fine), 0);
        assertEquals(coarse * speed, law.rate(speed, coarse), 1e-15);
    }

    @Test
    void growsWithTheSpeed() {
        double last = 0;
        for (double reynolds = 0; reynolds < 1e9; reynolds = 1.3 * reynolds + 0.01) {
            double found = WallFriction.amplification(reynolds);
            assertTrue(found >= last && found <= 1e9, "at " + reynolds + ": " + found + " after " + last);
            last = found;
        }
    }

    @Test
    void knobsLargerThanACellAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new LogLaw(0.034));
        assertThrows(IllegalArgumentException.class, () -> new LogLaw(-0.001));
    }
}
