package slackwater.field;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * How well the mean of a series of speeds is known, from the means of its batches, which are long enough to count as
 * independent of each other. Metres per second.
 *
 * @param meanMPerS mean over the samples
 * @param standardErrorMPerS standard error of that mean; infinite with fewer than two batches
 * @param marginMPerS half of the 95 % interval, by Student's t; infinite with fewer than two batches
 */
public record BatchMeans(double meanMPerS, double standardErrorMPerS, double marginMPerS) {
    private static final double CONFIDENCE = 0.95;

    /** Over the first samples of a series, cut into batches of a length. */
    public static BatchMeans of(float[] speeds, int samples, int perBatch) {
        int batches = samples / perBatch;
        double mean = mean(speeds, 0, samples);
        if (batches < 2) {
            return new BatchMeans(mean, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double squares = 0;
        for (int batch = 0; batch < batches; batch++) {
            double deviation = mean(speeds, batch * perBatch, (batch + 1) * perBatch) - mean;
            squares += deviation * deviation;
        }
        double error = Math.sqrt(squares / (batches - 1) / batches);
        double quantile = new TDistribution(batches - 1.0).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
        return new BatchMeans(mean, error, error * quantile);
    }

    private static double mean(float[] speeds, int from, int to) {
        double sum = 0;
        for (int n = from; n < to; n++) {
            sum += speeds[n];
        }
        return sum / (to - from);
    }
}
