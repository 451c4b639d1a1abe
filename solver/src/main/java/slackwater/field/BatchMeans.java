package slackwater.field;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * How well the mean of a series of speeds is known, from the means of its batches. Neighbouring batches are a little
 * alike: the variance of a mean of many is then (1 + r)/(1 - r) times that of independent ones, for a correlation r
 * that falls off by r from batch to batch [Wilks2011]. Metres per second.
 *
 * @param meanMPerS mean over the samples
 * @param standardErrorMPerS standard error of that mean; infinite with fewer than two batches
 * @param marginMPerS half of the 95 % interval, by Student's t; infinite with fewer than two batches
 */
public record BatchMeans(double meanMPerS, double standardErrorMPerS, double marginMPerS) {
    private static final double CONFIDENCE = 0.95;
    /**
     * Of turns of the water that follow upon each other, at corals: measured, docs/performance.md. Batches of several
     * turns are less alike; their errors come out too large.
     */
    private static final double CORRELATION = 0.27;
    private static final double ALIKE = Math.sqrt((1 + CORRELATION) / (1 - CORRELATION));

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
        double error = standardError(squares / (batches - 1), batches);
        double quantile = new TDistribution(batches - 1.0).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
        return new BatchMeans(mean, error, error * quantile);
    }

    /** Of the mean of some batches, from the variance of one. */
    public static double standardError(double variance, int batches) {
        return ALIKE * Math.sqrt(variance / batches);
    }

    private static double mean(float[] speeds, int from, int to) {
        double sum = 0;
        for (int n = from; n < to; n++) {
            sum += speeds[n];
        }
        return sum / (to - from);
    }
}
