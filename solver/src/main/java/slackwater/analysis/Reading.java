package slackwater.analysis;

import java.util.Arrays;
import slackwater.field.BatchMeans;
import slackwater.field.ProbeSeries;

/**
 * What one probe's samples come to, metres per second. Only whole batches count, so that a pump's pattern enters with
 * whole periods; with less than one whole batch every sample counts.
 *
 * @param meanMPerS mean speed
 * @param rmsMPerS root of the mean square of the speed
 * @param p95MPerS the speed that is passed 5 % of the time
 * @param standardErrorMPerS standard error of the mean by batch means; infinite with fewer than two batches
 * @param marginMPerS half the width of the mean's 95 % interval: the standard error times Student's t for the number
 *     of batches (2.0 for 60 batches, more for few); infinite with fewer than two batches
 */
public record Reading(double meanMPerS, double rmsMPerS, double p95MPerS, double standardErrorMPerS,
                      double marginMPerS) {
    private static final double GUST_FRACTION = 0.95;

    /** @throws IllegalArgumentException if the series holds no sample */
    public static Reading of(ProbeSeries series) {
        int perBatch = Math.max(1, series.samplesPerBatch());
        int batches = series.speedMPerS().length / perBatch;
        int count = batches == 0 ? series.speedMPerS().length : batches * perBatch;
        if (count == 0) {
            throw new IllegalArgumentException("probe \"" + series.probe().name() + "\" holds no samples");
        }
        double[] speeds = new double[count];
        for (int n = 0; n < count; n++) {
            speeds[n] = series.speedMPerS()[n];
        }
        double meanSquare = Arrays.stream(speeds).map(speed -> speed * speed).average().orElseThrow();
        BatchMeans known = BatchMeans.of(series.speedMPerS(), count, perBatch);
        return new Reading(known.meanMPerS(), Math.sqrt(meanSquare), quantile(speeds, GUST_FRACTION),
                known.standardErrorMPerS(), known.marginMPerS());
    }

    /** Linear between order statistics, type 7 of Hyndman and Fan 1996, The American Statistician 50:361. */
    static double quantile(double[] values, double fraction) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double place = fraction * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
