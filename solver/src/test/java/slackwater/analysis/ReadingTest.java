package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import slackwater.field.Probe;
import slackwater.field.ProbeSeries;
import slackwater.geometry.Vec3;

class ReadingTest {
    private static final double SINGLE = 1e-6;

    @Test
    void agreesWithAnIndependentLibrary() {
        Random random = new Random(11);
        float[] speeds = new float[12 * 25];
        double[] all = new double[speeds.length];
        DescriptiveStatistics batchMeans = new DescriptiveStatistics();
        for (int batch = 0; batch < 12; batch++) {
            DescriptiveStatistics batchSpeeds = new DescriptiveStatistics();
            for (int n = batch * 25; n < (batch + 1) * 25; n++) {
                speeds[n] = (float) (0.1 + 0.03 * random.nextGaussian() + 0.01 * batch % 3);
                all[n] = speeds[n];
                batchSpeeds.addValue(speeds[n]);
            }
            batchMeans.addValue(batchSpeeds.getMean());
        }
        Reading reading = Reading.of(series(25, speeds));
        DescriptiveStatistics statistics = new DescriptiveStatistics(all);
        assertEquals(statistics.getMean(), reading.meanMPerS(), SINGLE);
        assertEquals(statistics.getQuadraticMean(), reading.rmsMPerS(), SINGLE);
        assertEquals(new Percentile(95).withEstimationType(EstimationType.R_7).evaluate(all), reading.p95MPerS(),
                SINGLE);
        // Turns of the water correlate by 0.27: the variance of their mean is 1.27/0.73 times that of independent ones.
        double standardError = Math.sqrt(1.27 / 0.73) * batchMeans.getStandardDeviation() / Math.sqrt(12);
        assertEquals(standardError, reading.standardErrorMPerS(), SINGLE);
        // Student's t for 11 degrees of freedom, two-sided 95 %: 2.201 in any printed table
        assertEquals(2.201 * standardError, reading.marginMPerS(), 1e-3 * standardError);
    }

    @Test
    void leavesOutABrokenBatch() {
        Reading whole = Reading.of(series(2, 0.1f, 0.2f, 0.3f, 0.4f));
        assertEquals(whole, Reading.of(series(2, 0.1f, 0.2f, 0.3f, 0.4f, 9f)));
    }

    @Test
    void knowsNoMarginFromASingleBatch() {
        Reading reading = Reading.of(series(10, 0.1f, 0.3f));
        assertEquals(0.2, reading.meanMPerS(), SINGLE);
        assertEquals(Double.POSITIVE_INFINITY, reading.marginMPerS());
    }

    @Test
    void refusesAnEmptySeries() {
        assertThrows(IllegalArgumentException.class, () -> Reading.of(series(10)));
    }

    private static ProbeSeries series(int perBatch, float... speeds) {
        return new ProbeSeries(new Probe("a coral", List.of(Vec3.ZERO), List.of()), 0.1, perBatch, speeds);
    }
}
