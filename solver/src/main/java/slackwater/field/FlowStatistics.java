package slackwater.field;

import java.util.stream.Stream;

/**
 * The flow averaged over the window, one value a cell in the order of the grid, metres per second.
 * Cells of glass, rock and sand hold 0 and are false in {@code fluid}.
 *
 * @param grid the cells
 * @param fluid true where there is water
 * @param meanU mean velocity along x (meanV along y, meanW along z)
 * @param meanSpeed mean of |u|: what a coral feels, about 1.4 times the speed of the mean velocity
 * @param rmsSpeed root of the mean of |u|^2
 * @param standardErrorSpeed standard error of meanSpeed, from batch means
 * @param wallShear mean of the walls' shear stress rho u_tau^2, whatever its direction, where water touches glass, rock
 *     or sand, pascals; 0 elsewhere
 * @param rmsWallShear root of the mean of its square, pascals
 * @param gustWallShear the shear stress that is passed 5 % of the time, pascals: gusts are what lifts
 */
public record FlowStatistics(Grid grid, boolean[] fluid, float[] meanU, float[] meanV, float[] meanW,
                             float[] meanSpeed, float[] rmsSpeed, float[] standardErrorSpeed,
                             float[] wallShear, float[] rmsWallShear, float[] gustWallShear) {
    /** 1.645 standard deviations: the 95th percentile of a normal distribution. */
    private static final double GUST_DEVIATIONS = 1.645;

    public FlowStatistics {
        int cells = grid.cells();
        Stream<float[]> arrays = Stream.of(meanU, meanV, meanW, meanSpeed, rmsSpeed, standardErrorSpeed, wallShear,
                rmsWallShear, gustWallShear);
        if (fluid.length != cells || arrays.anyMatch(array -> array.length != cells)) {
            throw new IllegalArgumentException("every array must hold one value for each of the " + cells + " cells");
        }
    }

    /** With gusts of the shear taken as its mean and 1.645 standard deviations, where they were not counted. */
    public FlowStatistics(Grid grid, boolean[] fluid, float[] meanU, float[] meanV, float[] meanW, float[] meanSpeed,
                          float[] rmsSpeed, float[] standardErrorSpeed, float[] wallShear, float[] rmsWallShear) {
        this(grid, fluid, meanU, meanV, meanW, meanSpeed, rmsSpeed, standardErrorSpeed, wallShear, rmsWallShear,
                gusts(wallShear, rmsWallShear));
    }

    private static float[] gusts(float[] mean, float[] rms) {
        float[] gusts = new float[mean.length];
        for (int cell = 0; cell < gusts.length; cell++) {
            double variance = rms[cell] * rms[cell] - mean[cell] * mean[cell];
            gusts[cell] = (float) (mean[cell] + GUST_DEVIATIONS * Math.sqrt(Math.max(0, variance)));
        }
        return gusts;
    }

    /** The same flow with every speed at a multiple: what pumps that are all off by one share make of it. */
    public FlowStatistics scaled(double factor) {
        return new FlowStatistics(grid, fluid, times(meanU, factor), times(meanV, factor), times(meanW, factor),
                times(meanSpeed, factor), times(rmsSpeed, factor), times(standardErrorSpeed, factor),
                times(wallShear, factor * factor), times(rmsWallShear, factor * factor),
                times(gustWallShear, factor * factor));
    }

    private static float[] times(float[] values, double factor) {
        float[] scaled = new float[values.length];
        for (int n = 0; n < values.length; n++) {
            scaled[n] = (float) (values[n] * factor);
        }
        return scaled;
    }
}
