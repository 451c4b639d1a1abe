package slackwater.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Intervals hold as often as they say. Batches follow a first-order autoregression with the correlation that turns of
 * the water have, whose mean is known to be 0. Source: its exact properties [Wilks2011].
 */
class BatchMeansTest {
    private static final double CORRELATION = 0.27;
    private static final int SERIES = 20_000;

    /** How often the 95 % interval of series of so many batches holds the true mean. */
    private static double held(int batches, double correlation) {
        Random random = new Random(5);
        int held = 0;
        for (int series = 0; series < SERIES; series++) {
            float[] speeds = new float[batches];
            double value = random.nextGaussian();
            for (int batch = 0; batch < batches; batch++) {
                speeds[batch] = (float) value;
                value = correlation * value + Math.sqrt(1 - correlation * correlation) * random.nextGaussian();
            }
            BatchMeans known = BatchMeans.of(speeds, batches, 1);
            held += Math.abs(known.meanMPerS()) <= known.marginMPerS() ? 1 : 0;
        }
        return (double) held / SERIES;
    }

    /** 95 %, but for half a percent of chance and half of few batches. */
    @Test
    void intervalsHoldWhereTurnsAreAlike() {
        for (int batches : new int[] {6, 8, 16}) {
            assertEquals(0.95, held(batches, CORRELATION), 0.01, batches + " batches");
        }
    }

    @Test
    void theyAreWideWhereTurnsAreNotAlike() {
        double held = held(8, 0);
        assertTrue(held > 0.97 && held < 0.99, "held " + held);
    }
}
