package slackwater.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.field.Interpolation;
import slackwater.geometry.Vec3;

/**
 * How much the mean speeds depend on the size of the cells, seen from the same tank on cells k times as large.
 *
 * <p>Richardson's estimate at first order [Roache1994]: where errors grow in proportion to the cell, a fine reading is
 * off by its difference from the coarse one over k - 1. First order, because the edges of rock, sand and jets are known
 * to half a cell and the walls' friction is that of the first cell. Of the square of a difference, what the two
 * standard errors alone explain is taken off.
 *
 * <p>All results are standard deviations: two grids cannot show how wrong the estimate itself is, and tried on tanks
 * that were computed on finer grids still it held two errors of three, twice it nine of ten (docs/numerics.md).
 */
final class GridDoubt {
    /** From the median of absolute values to the standard deviation of a normal distribution. */
    private static final double DEVIATIONS_PER_MEDIAN = 1.4826;

    private final FlowStatistics fine;
    private final FlowStatistics coarse;
    private final double ratio;
    private final Interpolation coarseSpeed;
    private final Interpolation coarseError;
    private final double typicalFraction;
    private double coarseSum;
    private double fineSum;

    GridDoubt(FlowStatistics fine, FlowStatistics coarse) {
        this.fine = fine;
        this.coarse = coarse;
        this.ratio = coarse.grid().cellSizeM() / fine.grid().cellSizeM();
        this.coarseSpeed = new Interpolation(coarse.grid(), coarse.fluid(), coarse.meanSpeed());
        this.coarseError = new Interpolation(coarse.grid(), coarse.fluid(), coarse.standardErrorSpeed());
        this.typicalFraction = typical();
    }

    /** The grid's part in the speed of a typical place, as a share of that speed, one standard deviation. */
    double typicalFraction() {
        return typicalFraction;
    }

    /** Mean speed of the whole tank on the coarse cells over that on the fine ones, less 1. */
    double coarseBiasFraction() {
        return fineSum == 0 ? 0 : coarseSum / fineSum - 1;
    }

    /**
     * The grid's part in a reading, metres per second, one standard deviation: the larger of what the coral's own
     * points show, which may be small by accident, and what a typical place of the tank shows.
     */
    double of(List<Vec3> pointsM, double readingMPerS) {
        Interpolation speed = new Interpolation(fine.grid(), fine.fluid(), fine.meanSpeed());
        Interpolation error = new Interpolation(fine.grid(), fine.fluid(), fine.standardErrorSpeed());
        List<Vec3> common = pointsM.stream()
                .filter(point -> speed.at(point).isPresent() && coarseSpeed.at(point).isPresent()).toList();
        double floor = typicalFraction * readingMPerS;
        if (common.isEmpty()) {
            return floor;
        }
        double difference = mean(speed, common) - mean(coarseSpeed, common);
        double chance = Math.hypot(mean(error, common), mean(coarseError, common));
        return Math.max(floor, estimate(difference * difference, chance * chance));
    }

    /** The same for each cell, smoothed over a few cells, and at least that of a typical place; metres per second. */
    float[] local() {
        Grid grid = fine.grid();
        float[] squares = new float[grid.cells()];
        float[] chances = new float[grid.cells()];
        boolean[] common = new boolean[grid.cells()];
        for (int cell = 0; cell < squares.length; cell++) {
            OptionalDouble other = fine.fluid()[cell] ? coarseSpeed.at(grid.centreM(cell)) : OptionalDouble.empty();
            if (other.isPresent()) {
                double difference = fine.meanSpeed()[cell] - other.getAsDouble();
                double error = coarseError.at(grid.centreM(cell)).orElse(0);
                common[cell] = true;
                squares[cell] = (float) (difference * difference);
                chances[cell] = (float) (error * error
                        + fine.standardErrorSpeed()[cell] * fine.standardErrorSpeed()[cell]);
            }
        }
        int reach = (int) Math.ceil(ratio);
        Smoothing.within(grid, common, squares, reach);
        Smoothing.within(grid, common, chances, reach);
        float[] doubt = new float[grid.cells()];
        for (int cell = 0; cell < doubt.length; cell++) {
            doubt[cell] = (float) Math.max(typicalFraction * fine.meanSpeed()[cell],
                    estimate(squares[cell], chances[cell]));
        }
        return doubt;
    }

    private double estimate(double square, double chance) {
        return Math.sqrt(Math.max(0, square - chance)) / (ratio - 1);
    }

    /**
     * Over the cells that are water on both grids, the fine field averaged over each coarse cell: the standard
     * deviation of the relative difference, by way of the median, which a few wild cells do not move.
     */
    private double typical() {
        Coarsening onto = new Coarsening(fine.grid(), fine.fluid(), coarse.grid());
        double[] speeds = onto.of(fine.meanSpeed());
        double[] errors = onto.of(fine.standardErrorSpeed());
        double[] differences = new double[speeds.length];
        double[] chances = new double[speeds.length];
        int count = 0;
        for (int cell = 0; cell < speeds.length; cell++) {
            double speed = speeds[cell];
            if (coarse.fluid()[cell] && onto.isWater(cell) && speed > 0) {
                double error = Math.hypot(errors[cell], coarse.standardErrorSpeed()[cell]) / speed;
                differences[count] = Math.abs(speed - coarse.meanSpeed()[cell]) / speed;
                chances[count++] = error * error;
                fineSum += speed;
                coarseSum += coarse.meanSpeed()[cell];
            }
        }
        double deviation = DEVIATIONS_PER_MEDIAN * median(differences, count);
        return estimate(deviation * deviation, median(chances, count));
    }

    private static double mean(Interpolation field, List<Vec3> points) {
        return points.stream().mapToDouble(point -> field.at(point).orElseThrow()).average().orElseThrow();
    }

    private static double median(double[] values, int count) {
        double[] sorted = Arrays.copyOf(values, count);
        Arrays.sort(sorted);
        return count == 0 ? 0 : (sorted[(count - 1) / 2] + sorted[count / 2]) / 2;
    }
}
