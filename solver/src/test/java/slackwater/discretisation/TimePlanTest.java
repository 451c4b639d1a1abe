package slackwater.discretisation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pattern.Kind;

/** How time is cut. Source: arithmetic, by hand. */
class TimePlanTest {
    private static final double TURN_S = 20;

    private static Pattern every(Kind kind, double periodS) {
        return new Pattern(kind, periodS, 0.3, 0);
    }

    /** Samples are whole steps, so they miss by half of one; steps are shortened by up to a sample in a batch. */
    private static void sampled(double expectedS, double longestStepS, List<Pattern> patterns) {
        TimePlan plan = TimePlan.of(longestStepS, TURN_S, patterns);
        assertTrue(plan.timeStepS() <= longestStepS, "steps of " + plan.timeStepS());
        assertEquals(expectedS, plan.sampleS(), longestStepS / 2 + expectedS * plan.sampleS() / plan.batchS());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0007, 0.0037, 0.01})
    void samplesLieATwentiethOfASecondApart(double longestStepS) {
        sampled(0.05, longestStepS, List.of());
        sampled(0.05, longestStepS, List.of(Pattern.STEADY, Pattern.STEADY));
        for (Kind kind : List.of(Kind.PULSE, Kind.SINE, Kind.ALTERNATE)) {
            sampled(0.05, longestStepS, List.of(Pattern.STEADY, every(kind, 3)));
        }
    }

    /** Half the samples: the step stays, and a batch has no more than one of the old samples added. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 20.06, 3.3})
    void thinnedItLooksHalfAsOften(double turnS) {
        TimePlan plan = TimePlan.of(0.0037, turnS, List.of());
        TimePlan thinned = plan.thinned();
        assertEquals(plan.timeStepS(), thinned.timeStepS());
        assertEquals(2 * plan.sampleS(), thinned.sampleS(), 1e-12);
        double longer = thinned.batchS() - plan.batchS();
        assertTrue(longer > -1e-9 && longer < plan.sampleS() + 1e-9, "longer by " + longer);
    }

    private static double batchS(Pattern... patterns) {
        TimePlan plan = TimePlan.of(0.0037, TURN_S, List.of(patterns));
        assertTrue(plan.wholePeriods());
        return plan.batchS();
    }

    @Test
    void batchesAreATurnOrTheNextWholePeriods() {
        assertEquals(TURN_S, batchS(), 1e-9);
        assertEquals(TURN_S, batchS(Pattern.STEADY), 1e-9);
        assertEquals(21, batchS(every(Kind.PULSE, 3)), 1e-9);
        assertEquals(24, batchS(every(Kind.PULSE, 4), Pattern.STEADY, every(Kind.SINE, 6)), 1e-9);
        assertEquals(30, batchS(every(Kind.ALTERNATE, 30)), 1e-9);
        // Alone it needs no multiple, and so no whole ticks.
        assertEquals(20.02, batchS(every(Kind.SINE, 1.43)), 1e-9);
    }

    /** 7 s and 7.05 s meet after 987 s, far beyond two minutes; 1.43 s is no whole number of twentieths. */
    @Test
    void withoutACommonMultipleTheLongestPeriodIsWhole() {
        for (double other : new double[] {7.05, 1.43}) {
            TimePlan plan = TimePlan.of(0.0037, TURN_S, List.of(every(Kind.PULSE, 7), every(Kind.SINE, other)));
            assertFalse(plan.wholePeriods());
            assertEquals(other > 7 ? 21.15 : 21, plan.batchS(), 1e-9);
        }
    }
}
