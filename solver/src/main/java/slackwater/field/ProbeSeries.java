package slackwater.field;

import java.util.List;
import slackwater.geometry.Vec3;

/**
 * Speed over time at one place, sampled over the averaging window.
 *
 * @param name the coral it belongs to
 * @param pointsM the points over which each sample is averaged, metres
 * @param sampleIntervalS time between samples
 * @param samplesPerBatch samples in each batch of the batch means; a batch is a whole number of pump periods
 * @param speedMPerS one value a sample: mean of |u| over the points
 */
public record ProbeSeries(String name, List<Vec3> pointsM, double sampleIntervalS, int samplesPerBatch,
                          float[] speedMPerS) {
}
