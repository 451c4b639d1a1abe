package slackwater.field;

/**
 * Speed over time at one probe, sampled over the averaging window.
 *
 * @param probe the place
 * @param sampleIntervalS time between samples
 * @param samplesPerBatch samples in each batch of the batch means; a batch is a whole number of pump periods
 * @param speedMPerS one value a sample: mean of |u| over the probe's points
 */
public record ProbeSeries(Probe probe, double sampleIntervalS, int samplesPerBatch, float[] speedMPerS) {
    /** The same with every speed at a multiple. */
    public ProbeSeries scaled(double factor) {
        float[] speeds = speedMPerS.clone();
        for (int n = 0; n < speeds.length; n++) {
            speeds[n] = (float) (speeds[n] * factor);
        }
        return new ProbeSeries(probe, sampleIntervalS, samplesPerBatch, speeds);
    }
}
