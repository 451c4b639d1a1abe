package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** How the recorded water is read between faces: laws, and an exact flow. Nothing to look up. */
class WaterTest {
    private static final double NEAR = 1e-4;

    /** In every cell the divergence is, everywhere in it, what flows through its faces: 0 where that balances. */
    @Test
    void insideACellTheDivergenceIsThatOfItsFaces() {
        MadeFlow box = new MadeFlow(7, 6, 5, 0.01);
        Random random = new Random(5);
        for (int n = 0; n < 40; n++) {
            box.fluid[random.nextInt(box.fluid.length)] = false;
        }
        box.stream(at -> random.nextGaussian(), at -> random.nextGaussian(), at -> random.nextGaussian());
        Water water = new Water(box.steady());
        water.turnTo(0);
        for (int cell = 0; cell < box.fluid.length; cell++) {
            int i = cell % 7;
            int j = cell / 7 % 6;
            int k = cell / 42;
            if (box.fluid[cell]) {
                double middle = divergence(water, i + 0.5, j + 0.5, k + 0.5);
                assertEquals(middle, divergence(water, i + 0.1, j + 0.8, k + 0.3), 1e-3);
                assertEquals(middle, divergence(water, i + 0.7, j + 0.2, k + 0.9), 1e-3);
                water.read(i + 1e-9, j + 0.4, k + 0.6, 0);
                double here = water.u;
                if (i > 0 && box.fluid[cell - 1]) {
                    water.read(i - 1e-9, j + 0.4, k + 0.6, 0);
                }
                assertEquals(i > 0 && box.fluid[cell - 1] ? water.u : 0, here, 1e-5, "through a face, or a wall");
            }
        }
    }

    /** A whirl that fills the box, known exactly: half the cells, a quarter of the error. */
    @Test
    void itIsOfSecondOrder() {
        double coarse = error(12);
        double fine = error(24);
        assertTrue(coarse / fine > 3.5, coarse + " m/s, then " + fine);
    }

    private static double error(int cells) {
        double k = Math.PI / 0.24;
        MadeFlow box = new MadeFlow(cells, 3, cells, 0.24 / cells);
        box.stream(at -> Math.sin(k * at.x()) * Math.cos(k * at.z()), at -> 0,
                at -> -Math.cos(k * at.x()) * Math.sin(k * at.z()));
        Water water = new Water(box.steady());
        water.turnTo(0);
        Random random = new Random(7);
        double squares = 0;
        for (int n = 0; n < 2000; n++) {
            double x = 0.06 + 0.12 * random.nextDouble();
            double z = 0.06 + 0.12 * random.nextDouble();
            water.read(x / 0.24 * cells, 1.5, z / 0.24 * cells, 0);
            squares += Math.pow(water.u * 0.24 / cells - Math.sin(k * x) * Math.cos(k * z), 2) / 2000;
        }
        return Math.sqrt(squares);
    }

    private static double divergence(Water water, double x, double y, double z) {
        water.read(x + NEAR, y, z, 0);
        double sum = water.u;
        water.read(x - NEAR, y, z, 0);
        sum -= water.u;
        water.read(x, y + NEAR, z, 0);
        sum += water.v;
        water.read(x, y - NEAR, z, 0);
        sum -= water.v;
        water.read(x, y, z + NEAR, 0);
        sum += water.w;
        water.read(x, y, z - NEAR, 0);
        return (sum - water.w) / (2 * NEAR);
    }
}
