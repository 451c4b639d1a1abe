package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.MadeUpTank;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;

/** The probability of still water means what it says: tried on fields whose truth is known. */
class StillnessTest {
    private static final double CELL_M = 0.02;
    private static final double CHANCE_M_PER_S = 0.002;
    private static final double GRID_M_PER_S = 0.003;

    /** A tank's truth and what two grids read of it. */
    private record Draw(float[] truth, FlowStatistics fine, FlowStatistics coarse) {
    }

    /**
     * Truth rises along the tank from 0 to 6 cm/s. The fine grid errs by a smooth random field, the coarse one by twice
     * that, both by chance on top. One cell in each of 24 far corners of 60 tanks is looked at: nearly independent.
     * Even chances must be even, small ones may not be larger than given nor great ones smaller, within four standard
     * deviations of the binomial distribution.
     */
    @Test
    void ofTheCellsGivenEvenChancesHalfAreStill() {
        double[][] bounds = {{0, 0.05}, {0.05, 0.2}, {0.4, 0.6}, {0.8, 0.95}, {0.95, 1.01}};
        int[] given = new int[bounds.length];
        int[] still = new int[bounds.length];
        double[] said = new double[bounds.length];
        ForAll.seeds(60, random -> {
            Draw draw = draw(random);
            float[] local = new GridDoubt(draw.fine, draw.coarse).local();
            float[] probability = new Stillness(draw.fine).probability(local, 0);
            for (int pick = 0; pick < 24; pick++) {
                int cell = pick(draw.fine.grid(), pick, random);
                for (int group = 0; group < bounds.length; group++) {
                    if (probability[cell] >= bounds[group][0] && probability[cell] < bounds[group][1]) {
                        given[group]++;
                        said[group] += probability[cell];
                        still[group] += draw.truth[cell] < StillWater.MEAN_LIMIT_M_PER_S ? 1 : 0;
                    }
                }
            }
        });
        for (int group = 0; group < bounds.length; group++) {
            assertTrue(given[group] > 40, Arrays.toString(given));
            double chance = said[group] / given[group];
            double share = (double) still[group] / given[group];
            double bound = 4 * Math.sqrt(chance * (1 - chance) / given[group]);
            String words = "given " + chance + " to " + given[group] + ", still " + share;
            assertTrue(group > 2 || share < chance + bound, words);
            assertTrue(group < 2 || share > chance - bound, words);
        }
    }

    @Test
    void isAProbabilityAndNothingInRock() {
        FlowStatistics flow = MadeUpTank.flow(MadeUpTank.scenario(), CELL_M);
        float[] probability = new Stillness(flow).probability(new float[flow.grid().cells()], 0.2);
        for (int cell = 0; cell < probability.length; cell++) {
            assertTrue(probability[cell] >= 0 && probability[cell] <= 1, "cell " + cell);
            assertTrue(flow.fluid()[cell] || probability[cell] == 0, "rock is not still water");
        }
    }

    @Test
    void withoutAnyDoubtItIsYesOrNo() {
        assertEquals(1, probability(0.019f, 0.019f, 0, 0));
        assertEquals(0, probability(0.021f, 0.021f, 0, 0));
        assertEquals(0.5, probability(0.02f, 0.02f, 0.003f, 0), 1e-3);
    }

    /** Against drawing pumps and readings a hundred thousand times; nine outputs stand for the normal distribution. */
    @Test
    void pumpsThatAreOffScaleMeanAndGusts() {
        for (float[] at : new float[][] {{0.016f, 0.02f}, {0.019f, 0.028f}, {0.024f, 0.026f}, {0.03f, 0.031f}}) {
            Random random = new Random(5);
            double gustiness = 1.645 * Math.sqrt(at[1] * at[1] - at[0] * at[0]);
            int still = 0;
            for (int n = 0; n < 100_000; n++) {
                double output = 1 + 0.4 / 1.959964 * random.nextGaussian();
                double mean = at[0] + 0.002 * random.nextGaussian();
                still += output * mean < 0.02 && output * (mean + gustiness) < 0.05 ? 1 : 0;
            }
            assertEquals(still / 1e5, probability(at[0], at[1], 0.002f, 0.4), 0.03, Arrays.toString(at));
        }
    }

    private static float probability(float mean, float rms, float error, double pumpFraction) {
        Grid grid = new Grid(1, 1, 1, CELL_M);
        float[] none = new float[1];
        FlowStatistics flow = new FlowStatistics(grid, new boolean[] {true}, none, none, none, new float[] {mean},
                new float[] {rms}, new float[] {error}, none, none);
        return new Stillness(flow).probability(none, pumpFraction)[0];
    }

    private static Draw draw(Random random) {
        double[][] waves = new double[12][];
        for (int n = 0; n < waves.length; n++) {
            waves[n] = new double[] {random.nextGaussian() * 12, random.nextGaussian() * 12,
                random.nextGaussian() * 12, random.nextDouble() * 2 * Math.PI, random.nextGaussian()};
        }
        Grid fine = MadeUpTank.grid(CELL_M);
        Grid coarse = MadeUpTank.grid(2 * CELL_M);
        float[] truth = new float[fine.cells()];
        for (int cell = 0; cell < truth.length; cell++) {
            truth[cell] = (float) truth(fine.centreM(cell));
        }
        return new Draw(truth, read(fine, waves, 1, random), read(coarse, waves, 2, random));
    }

    private static double truth(Vec3 at) {
        return 0.05 * at.x();
    }

    private static FlowStatistics read(Grid grid, double[][] waves, double times, Random random) {
        boolean[] fluid = new boolean[grid.cells()];
        float[] mean = new float[grid.cells()];
        float[] error = new float[grid.cells()];
        Arrays.fill(fluid, true);
        Arrays.fill(error, (float) CHANCE_M_PER_S);
        for (int cell = 0; cell < mean.length; cell++) {
            Vec3 at = grid.centreM(cell);
            double off = 0;
            for (double[] wave : waves) {
                off += wave[4] * Math.sqrt(2.0 / waves.length)
                        * Math.cos(wave[0] * at.x() + wave[1] * at.y() + wave[2] * at.z() + wave[3]);
            }
            mean[cell] = (float) (truth(at) + times * GRID_M_PER_S * off + CHANCE_M_PER_S * random.nextGaussian());
        }
        float[] none = new float[grid.cells()];
        return new FlowStatistics(grid, fluid, none, none, none, mean, mean, error, none, none);
    }

    /** A cell near where the truth passes the limit, in one of 24 parts of the tank's cross-section. */
    private static int pick(Grid grid, int part, Random random) {
        int i = 10 + random.nextInt(20);
        int j = (int) ((part % 6 + random.nextDouble()) / 6 * grid.ny());
        int k = (int) ((part / 6 + random.nextDouble()) / 4 * grid.nz());
        return grid.index(i, j, k);
    }
}
