package slackwater.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.backend.Moments;
import slackwater.field.BatchMeans;
import slackwater.field.Grid;
import slackwater.field.Probe;
import slackwater.geometry.Vec3;

/** When a reading counts as known. Source: the standard error of batch means, set by hand. */
class ProbeRecordTest {
    private static final double MEAN_M_PER_S = 0.1;
    private static final int BATCHES = 8;
    private static final int PER_BATCH = 5;

    /** Batch means above and below by turns, so far that the standard error is this share of their mean. */
    private static boolean settled(double errorFraction, double cellSizeM, double limitMPerS) {
        Probe probe = new Probe("coral", List.of(new Vec3(0, 0, 0)), List.of(limitMPerS));
        ProbeRecord record = new ProbeRecord(probe, new Grid(1, 1, 1, cellSizeM), PER_BATCH);
        double apart = errorFraction / BatchMeans.standardError(BATCHES / (BATCHES - 1.0), BATCHES);
        Moments moments = new Moments(1);
        moments.ux()[0] = 1;
        for (int sample = 0; sample < BATCHES * PER_BATCH; sample++) {
            double sign = sample / PER_BATCH % 2 == 0 ? 1 : -1;
            record.add(moments, MEAN_M_PER_S * (1 + sign * apart));
        }
        float[] speeds = record.series(0.1).speedMPerS();
        BatchMeans known = BatchMeans.of(speeds, speeds.length, PER_BATCH);
        assertEquals(errorFraction * MEAN_M_PER_S, known.standardErrorMPerS(), 1e-6 * MEAN_M_PER_S);
        return record.settled();
    }

    /** The limit is the very mean: no run however long would get clear of it. */
    private static boolean known(double errorFraction, double cellSizeM) {
        return settled(errorFraction, cellSizeM, MEAN_M_PER_S);
    }

    @Test
    void twelvePercentAreGoodEnoughOnCellsOfACentimetre() {
        assertTrue(known(0.12, 0.02));
        assertTrue(known(0.12, 0.01));
        assertFalse(known(0.12, 0.005));
    }

    @Test
    void ninePercentAreGoodEnoughOnAllCellsAndFifteenOnNone() {
        for (double cellSizeM : new double[] {0.005, 0.01, 0.02}) {
            assertTrue(known(0.09, cellSizeM), "9 % on " + cellSizeM + " m");
            assertFalse(known(0.15, cellSizeM), "15 % on " + cellSizeM + " m");
        }
    }

    /** The 95 % interval of eight batches is 2.36 standard errors to either side: 35 % here. */
    @Test
    void whatIsClearOfItsLimitIsKnownAnyway() {
        assertTrue(settled(0.15, 0.005, 1.37 * MEAN_M_PER_S));
        assertFalse(settled(0.15, 0.005, 1.33 * MEAN_M_PER_S));
    }
}
