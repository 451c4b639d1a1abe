package slackwater.lattice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The moments that make a velocity set one. Source: Qian, d'Humieres and Lallemand 1992, Europhys. Lett. 17, 479. */
class VelocitySetTest {
    @Test
    void momentsAreIsotropicToFourthOrder() {
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                assertEquals(a == b ? 1.0 / 3 : 0, moment(a, b), 1e-15);
                for (int c = 0; c < 3; c++) {
                    assertEquals(0, moment(a, b, c), 1e-15);
                    for (int d = 0; d < 3; d++) {
                        double expected = (delta(a, b) * delta(c, d) + delta(a, c) * delta(b, d)
                                + delta(a, d) * delta(b, c)) / 9.0;
                        assertEquals(expected, moment(a, b, c, d), 1e-15);
                    }
                }
            }
        }
        assertEquals(1, moment(), 1e-15);
    }

    @Test
    void oppositesPointTheOtherWay() {
        for (int i = 0; i < VelocitySet.Q; i++) {
            int other = VelocitySet.opposite(i);
            assertEquals(-VelocitySet.cx(i), VelocitySet.cx(other));
            assertEquals(-VelocitySet.cy(i), VelocitySet.cy(other));
            assertEquals(-VelocitySet.cz(i), VelocitySet.cz(other));
            assertEquals(i, VelocitySet.direction(VelocitySet.cx(i), VelocitySet.cy(i), VelocitySet.cz(i)));
        }
    }

    private static int delta(int a, int b) {
        return a == b ? 1 : 0;
    }

    private static double moment(int... axes) {
        double sum = 0;
        for (int i = 0; i < VelocitySet.Q; i++) {
            double product = VelocitySet.weight(i);
            for (int axis : axes) {
                product *= axis == 0 ? VelocitySet.cx(i) : axis == 1 ? VelocitySet.cy(i) : VelocitySet.cz(i);
            }
            sum += product;
        }
        return sum;
    }
}
