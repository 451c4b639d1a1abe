package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.MadeUpTank;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;

/** On fields whose error is known: in proportion to the cell, with or without chance on top. */
class GridDoubtTest {
    private static final double CELL_M = 0.02;

    /** Speed (1 - c h) times the truth: the fine grid is off by c h of the truth, whatever the ratio of the cells. */
    @Test
    void findsAnErrorThatGrowsWithTheCell() {
        for (double ratio : new double[] {1.25, 1.5, 2, 3}) {
            double off = 0.06;
            FlowStatistics fine = field(CELL_M, 0, x -> (0.05 + 0.1 * x) * (1 - off));
            FlowStatistics coarse = field(CELL_M * ratio, 0, x -> (0.05 + 0.1 * x) * (1 - ratio * off));
            GridDoubt doubt = new GridDoubt(fine, coarse);
            assertEquals(1.4826 * off / (1 - off), doubt.typicalFraction(), 0.004, "ratio " + ratio);
            assertEquals((1 - ratio * off) / (1 - off) - 1, doubt.coarseBiasFraction(), 0.004);
        }
    }

    /** Two grids that differ by chance alone: most of the difference must not be blamed on the cells. */
    @Test
    void doesNotBlameChanceOnTheCells() {
        ForAll.seeds(10, random -> {
            float error = 0.01f;
            FlowStatistics fine = noisy(field(CELL_M, error, x -> 0.1), random);
            FlowStatistics coarse = noisy(field(2 * CELL_M, error, x -> 0.1), random);
            double raw = Math.sqrt(2) * error / 0.1;
            double found = new GridDoubt(fine, coarse).typicalFraction();
            assertTrue(found < 0.6 * raw, found + " of " + raw);
        });
    }

    @Test
    void aCoralsOwnDifferenceCountsWhereItIsLarger() {
        FlowStatistics fine = field(CELL_M, 0, x -> 0.1);
        FlowStatistics coarse = field(2 * CELL_M, 0, x -> x < 0.3 ? 0.06 : 0.09);
        GridDoubt doubt = new GridDoubt(fine, coarse);
        double typical = 1.4826 * 0.1;
        assertEquals(typical, doubt.typicalFraction(), 1e-6);
        assertEquals(0.04, doubt.of(List.of(new Vec3(0.1, 0.2, 0.2)), 0.1), 1e-6);
        assertEquals(0.1 * typical, doubt.of(List.of(new Vec3(1.0, 0.2, 0.2)), 0.1), 1e-6);
        float[] local = doubt.local();
        assertEquals(0.04, local[fine.grid().index(4, 12, 12)], 1e-6);
        assertEquals(0.1 * typical, local[fine.grid().index(55, 12, 12)], 1e-6);
    }

    /** A coral that rock swallows on the larger cells, and a tank without any movement. */
    @Test
    void whatCannotBeComparedTakesTheTypicalDoubt() {
        FlowStatistics fine = field(CELL_M, 0, x -> 0.1);
        FlowStatistics coarse = field(2 * CELL_M, 0, x -> 0.09);
        Arrays.fill(coarse.fluid(), 0, coarse.grid().nx() * coarse.grid().ny() * 3, false);
        GridDoubt doubt = new GridDoubt(fine, coarse);
        assertEquals(0.1 * doubt.typicalFraction(), doubt.of(List.of(new Vec3(0.6, 0.2, 0.01)), 0.1), 1e-9);
        GridDoubt nothing = new GridDoubt(field(CELL_M, 0, x -> 0), field(2 * CELL_M, 0, x -> 0));
        assertEquals(0, nothing.typicalFraction());
        assertEquals(0, nothing.coarseBiasFraction());
    }

    @Test
    void smoothingIsTheMeanOverTheCellsThatCount() {
        ForAll.seeds(20, random -> {
            Grid grid = new Grid(5, 4, 3, 0.01);
            boolean[] counts = new boolean[grid.cells()];
            float[] values = new float[grid.cells()];
            for (int cell = 0; cell < values.length; cell++) {
                counts[cell] = random.nextInt(3) > 0;
                values[cell] = random.nextFloat();
            }
            float[] smooth = values.clone();
            Smoothing.within(grid, counts, smooth, 1);
            for (int cell = 0; cell < values.length; cell++) {
                assertEquals(counts[cell] ? meanAbout(cell, grid, counts, values) : 0, smooth[cell], 1e-5);
            }
        });
    }

    private static double meanAbout(int cell, Grid grid, boolean[] counts, float[] values) {
        double sum = 0;
        int count = 0;
        for (int other = 0; other < values.length; other++) {
            Vec3 off = grid.centreM(other).minus(grid.centreM(cell)).times(1 / grid.cellSizeM());
            boolean near = Math.max(Math.abs(off.x()), Math.max(Math.abs(off.y()), Math.abs(off.z()))) < 1.5;
            if (near && counts[other]) {
                sum += values[other];
                count++;
            }
        }
        return sum / count;
    }

    private static FlowStatistics field(double cellM, float error, DoubleUnaryOperator speed) {
        Grid grid = MadeUpTank.grid(cellM);
        boolean[] fluid = new boolean[grid.cells()];
        Arrays.fill(fluid, true);
        float[] mean = new float[grid.cells()];
        float[] errors = new float[grid.cells()];
        Arrays.fill(errors, error);
        for (int cell = 0; cell < mean.length; cell++) {
            mean[cell] = (float) speed.applyAsDouble(grid.centreM(cell).x());
        }
        float[] none = new float[grid.cells()];
        return new FlowStatistics(grid, fluid, none, none, none, mean, mean, errors, none, none);
    }

    /** Chance moves whole blobs of water, so the noise is that of blocks of 8 cm. */
    private static FlowStatistics noisy(FlowStatistics flow, Random random) {
        Grid blocks = MadeUpTank.grid(0.08);
        double[] draw = random.doubles(blocks.cells()).map(share -> random.nextGaussian()).toArray();
        for (int cell = 0; cell < flow.meanSpeed().length; cell++) {
            flow.meanSpeed()[cell] += (float) (flow.standardErrorSpeed()[cell]
                    * draw[blocks.indexAt(flow.grid().centreM(cell))]);
        }
        return flow;
    }
}
