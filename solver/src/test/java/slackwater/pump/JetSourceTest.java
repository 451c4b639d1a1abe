package slackwater.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slackwater.geometry.Vec3;
import slackwater.scenario.Return;

class JetSourceTest {
    /** 1000 l/h through 2 cm: 0.884 m/s, and a Reynolds number of speed times diameter over viscosity. */
    @Test
    void theReynoldsNumberOfANozzleIsThatOfItsStream() {
        JetSource jet = JetSource.of(new Return(1000 / 3.6e6, 0.02, Vec3.ZERO, 0, 0));
        double speed = 1000 / 3.6e6 / (Math.PI / 4 * 0.02 * 0.02);
        assertEquals(speed, jet.slipstreamMPerS(0), 1e-12);
        assertEquals(speed * 0.02 / 1e-6, jet.reynolds(1e-6), 1e-6);
    }
}
