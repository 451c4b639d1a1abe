package slackwater.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.backend.Spread;

/**
 * Laws of multigrid ([Tatebe1993]): with its guess, conjugate gradients need hardly more rounds on many cells than on
 * few, where without it they need as many more as a way through the tank has more cells; as they ask for, the guess is
 * symmetric, (a, G b) = (b, G a), and positive; and nothing depends on how the work is spread.
 */
class PotentialGridTest {
    private static final int MOST_ROUNDS = 1000;
    private static final Spread TWO_BY_TWO = (count, part) -> {
        for (int n = 0; n < count; n += 2) {
            part.run(n, Math.min(n + 2, count));
        }
    };

    @Test
    void roundsHardlyGrowWithTheCells() {
        int[] some = {10, 9, 7};
        int few = rounds(some, passes(some), true);
        int[] more = {40, 36, 28};
        int many = rounds(more, passes(more), true);
        int without = rounds(more, passes(more), false);
        assertTrue(few <= 12 && many <= 1.5 * few, few + " rounds on few cells and " + many + " on many");
        assertTrue(without > 4 * many, without + " rounds without a guess");
    }

    /** Tanks a cell or two wide, and a sheet of rock with one hole, which larger cells do not see. */
    @Test
    void roundsStayFewInAwkwardTanks() {
        int[][] counts = {{1, 41, 23}, {30, 2, 9}, {5, 1, 1}, {1, 1, 1}};
        for (int[] count : counts) {
            int rounds = rounds(count, passes(count), true);
            assertTrue(rounds <= 20, rounds + " rounds in " + Arrays.toString(count));
        }
        int[] count = {24, 17, 16};
        float[][] sheet = passes(count);
        for (int row = 0; row < 17 * 16; row++) {
            sheet[0][row * 24 + 13] = row == 9 * 17 + 11 ? 1 : 0;
        }
        int rounds = rounds(count, sheet, true);
        assertTrue(rounds <= 60, rounds + " rounds through a hole");
    }

    @Test
    void aGuessIsSymmetricAndPositive() {
        Random random = new Random(5);
        int[] count = {11, 6, 9};
        float[] a = balanced(count, passes(count), random);
        float[] b = balanced(count, passes(count), random);
        float[] ofA = guess(count, a, Spread.ALONE);
        float[] ofB = guess(count, b, Spread.ALONE);
        double size = Math.sqrt(dot(a, ofA) * dot(b, ofB));
        assertEquals(dot(a, ofB) / size, dot(b, ofA) / size, 1e-5);
        assertTrue(dot(a, ofA) > 0 && dot(b, ofB) > 0);
    }

    @Test
    void theSameHoweverTheWorkIsSpread() {
        int[] count = {13, 8, 5};
        float[] rest = balanced(count, passes(count), new Random(6));
        assertArrayEquals(guess(count, rest, Spread.ALONE), guess(count, rest, TWO_BY_TWO));
    }

    /** Rounds of conjugate gradients [Hestenes1952] until a thousandth of the imbalance is left, r.m.s. */
    private static int rounds(int[] count, float[][] passes, boolean guessing) {
        PotentialGrid grid = new PotentialGrid(count, passes, Spread.ALONE);
        float[] left = balanced(count, passes, new Random(7));
        float[] way = new float[left.length];
        float[] flow = new float[left.length];
        double enough = 1e-6 * dot(left, left);
        double before = Double.POSITIVE_INFINITY;
        int rounds = 0;
        for (; rounds < MOST_ROUNDS && dot(left, left) > enough; rounds++) {
            System.arraycopy(left, 0, grid.rest, 0, left.length);
            float[] guess = guessing ? grid.guess() : left;
            double now = dot(left, guess);
            for (int n = 0; n < way.length; n++) {
                way[n] = guess[n] + (float) (now / before) * way[n];
            }
            int plane = count[0] * count[1];
            grid.outflow(way, flow, plane, way.length - plane);
            double far = now / dot(way, flow);
            for (int n = 0; n < left.length; n++) {
                left[n] -= (float) far * flow[n];
            }
            before = now;
        }
        return rounds;
    }

    private static float[] guess(int[] count, float[] rest, Spread spread) {
        PotentialGrid grid = new PotentialGrid(count, passes(count), spread);
        System.arraycopy(rest, 0, grid.rest, 0, rest.length);
        return grid.guess();
    }

    /** What an arbitrary potential leaves in each cell: so much arrives as leaves. */
    private static float[] balanced(int[] count, float[][] passes, Random random) {
        PotentialGrid grid = new PotentialGrid(count, passes, Spread.ALONE);
        int plane = count[0] * count[1];
        float[] potential = new float[grid.rest.length];
        for (int n = plane; n < potential.length - plane; n++) {
            potential[n] = (float) (3 * Math.sin(3.0 * (n % count[0]) / count[0]) * count[0] + random.nextGaussian());
        }
        float[] rest = new float[potential.length];
        grid.outflow(potential, rest, plane, potential.length - plane);
        return rest;
    }

    /** A tank with a block of rock in a corner, whose faces no water passes. */
    private static float[][] passes(int[] count) {
        float[][] passes = new float[3][count[0] * count[1] * count[2]];
        for (int k = 0, n = 0; k < count[2]; k++) {
            for (int j = 0; j < count[1]; j++) {
                for (int i = 0; i < count[0]; i++, n++) {
                    passes[0][n] = i > 0 && !rock(count, i, j, k) && !rock(count, i - 1, j, k) ? 1 : 0;
                    passes[1][n] = j > 0 && !rock(count, i, j, k) && !rock(count, i, j - 1, k) ? 1 : 0;
                    passes[2][n] = k > 0 && !rock(count, i, j, k) && !rock(count, i, j, k - 1) ? 1 : 0;
                }
            }
        }
        return passes;
    }

    private static boolean rock(int[] count, int i, int j, int k) {
        return i < count[0] / 3 && j < count[1] / 2 && k < count[2] / 2;
    }

    private static double dot(float[] a, float[] b) {
        double sum = 0;
        for (int n = 0; n < a.length; n++) {
            sum += (double) a[n] * b[n];
        }
        return sum;
    }
}
