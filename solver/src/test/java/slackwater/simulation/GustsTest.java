package slackwater.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;

/** Percentiles from counts against those from the sorted samples themselves; a bin is at most a quarter wide. */
class GustsTest {
    @Test
    void countsGiveThePercentilesOfTheSamples() {
        ForAll.seeds(20, random -> {
            Gusts gusts = new Gusts(2);
            float[] samples = new float[2000];
            double middle = Math.pow(10, -9 + 4 * random.nextDouble());
            for (int n = 0; n < samples.length; n++) {
                samples[n] = (float) (middle * Math.exp(0.7 * random.nextGaussian()));
                gusts.add(new float[] {0, samples[n]}, 0, 2);
            }
            Arrays.sort(samples);
            assertEquals(samples[1899], gusts.passed(100)[1], 0.04 * samples[1899]);
            assertEquals(samples[999], gusts.passed(1000)[1], 0.04 * samples[999]);
            assertEquals(0, gusts.passed(100)[0], "no wall, no stress");
        });
    }

    @Test
    void whatIsSeldomThereIsNotPassed() {
        Gusts gusts = new Gusts(1);
        for (int n = 0; n < 100; n++) {
            gusts.add(new float[] {n < 3 ? 1e-6f : 0}, 0, 1);
        }
        assertEquals(0, gusts.passed(5)[0]);
    }
}
