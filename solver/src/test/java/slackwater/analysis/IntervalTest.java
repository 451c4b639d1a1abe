package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.scenario.SpeedRange;

/** Laws of a reading's range and of the verdict that goes by it. */
class IntervalTest {
    @Test
    void holdsItsReadingAndNothingBelowStandingWater() {
        ForAll.seeds(200, random -> {
            double reading = random.nextDouble();
            Interval interval = Interval.about(reading, doubt(random, random.nextDouble()));
            assertTrue(interval.lowMPerS() >= 0 && interval.lowMPerS() <= reading, interval.toString());
            assertTrue(interval.highMPerS() >= reading, interval.toString());
        });
    }

    /** 3, 4 and 12: the root of their squares is 13. */
    @Test
    void partsThatHaveNothingToDoWithEachOtherAddUpInSquares() {
        assertEquals(0.13, new Doubt(0.03, OptionalDouble.of(0.04), 0.12).totalMPerS(), 1e-12);
        assertEquals(0.05, new Doubt(0.03, OptionalDouble.empty(), 0.04).totalMPerS(), 1e-12);
    }

    @Test
    void moreDoubtNeverMakesAVerdictSurer() {
        ForAll.seeds(500, random -> {
            double reading = 0.3 * random.nextDouble();
            SpeedRange wanted = new SpeedRange(0.1 * random.nextDouble(), 0.1 + 0.2 * random.nextDouble(), "");
            Doubt little = doubt(random, 0.02);
            Doubt more = new Doubt(little.chanceMPerS() + 0.05 * random.nextDouble(),
                    OptionalDouble.of(little.gridMPerS().orElseThrow() + 0.05 * random.nextDouble()),
                    little.pumpMPerS() + 0.05 * random.nextDouble());
            Verdict before = CoralJudge.verdict(Interval.about(reading, little), wanted, true);
            Verdict after = CoralJudge.verdict(Interval.about(reading, more), wanted, true);
            assertTrue(after == before || after == Verdict.MARGINAL, before + " became " + after);
        });
    }

    @Test
    void passesWithinFailsWithoutAndIsMarginalBetween() {
        ForAll.seeds(500, random -> {
            double low = 0.2 * random.nextDouble();
            Interval interval = new Interval(low, low + 0.2 * random.nextDouble());
            SpeedRange wanted = new SpeedRange(0.05, 0.25, "");
            boolean within = interval.lowMPerS() > 0.05 && interval.highMPerS() < 0.25;
            boolean without = interval.highMPerS() < 0.05 || interval.lowMPerS() > 0.25;
            assertEquals(within ? Verdict.PASS : without ? Verdict.FAIL : Verdict.MARGINAL,
                    CoralJudge.verdict(interval, wanted, true));
            assertEquals(without ? Verdict.FAIL : Verdict.MARGINAL, CoralJudge.verdict(interval, wanted, false));
        });
    }

    /** A user may write a range from 0: then no water is too slow. */
    @Test
    void aLowerLimitOfNothingAsksForNothing() {
        assertEquals(Verdict.PASS, CoralJudge.verdict(new Interval(0, 0.04), new SpeedRange(0, 0.1, ""), true));
    }

    @Test
    void isShownRoundedOutwards() {
        assertEquals("13.7 to 18.3", Figures.interval(new Interval(0.13799, 0.18201)));
        assertEquals("13.8 to 18.2", Figures.interval(new Interval(0.138, 0.182)));
        assertEquals("0.0 to 0.1", Figures.interval(new Interval(0, 0.0001)));
    }

    private static Doubt doubt(Random random, double most) {
        return new Doubt(most * random.nextDouble(), OptionalDouble.of(most * random.nextDouble()),
                most * random.nextDouble());
    }
}
