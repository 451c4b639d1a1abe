package slackwater.analysis;

import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;
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
    private static final double CONFIDENCE = 0.95;

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
        double mean = Arrays.stream(speeds).average().orElseThrow();
        double meanSquare = Arrays.stream(speeds).map(speed -> speed * speed).average().orElseThrow();
        double standardError = standardError(speeds, perBatch, batches, mean);
        double margin = batches < 2 ? Double.POSITIVE_INFINITY
                : standardError * new TDistribution(batches - 1.0).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
        return new Reading(mean, Math.sqrt(meanSquare), quantile(speeds, CONFIDENCE), standardError, margin);
    }

    /** Batch means: the batches are long enough to count as independent of each other. */
    private static double standardError(double[] speeds, int perBatch, int batches, double mean) {
        if (batches < 2) {
            return Double.POSITIVE_INFINITY;
        }
        double squares = 0;
        for (int batch = 0; batch < batches; batch++) {
            double batchMean = Arrays.stream(speeds, batch * perBatch, (batch + 1) * perBatch).average().orElseThrow();
            squares += (batchMean - mean) * (batchMean - mean);
        }
        return Math.sqrt(squares / (batches - 1) / batches);
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
