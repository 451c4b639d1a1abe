package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.analysis.Verdict;
import slackwater.scenario.Pump;

class ObjectiveTest {
    private static final List<Pump> PUMPS = List.of(Tanks.pump("a", 0.04, 0));
    private static final List<Piece> PIECES = List.of(Piece.of(PUMPS.get(0)));

    private static Finding finding(double speedMPerS, double still, double strong, double sand) {
        return new Finding(List.of(new CoralFinding("c", speedMPerS, 0, 1, 0.05, 0.5, Verdict.MARGINAL)), still, strong,
                0, "", sand, true);
    }

    private static double value(Finding finding, double output) {
        return Objective.USUAL.value(new Outcome.Read(finding), PIECES, Pumps.times(PUMPS, output / 0.6));
    }

    /** Speed is only the means: a coral on which food stays is out, at whatever speed, and worse than one cleared. */
    @Test
    void whatStaysOnACoralPutsItOutOfRange() {
        CoralFinding good = new CoralFinding("c", 0.2, 0.1, 0.3, 0.05, 0.5, Verdict.PASS, Verdict.PASS);
        CoralFinding unsure = new CoralFinding("c", 0.2, 0.1, 0.3, 0.05, 0.5, Verdict.MARGINAL, Verdict.MARGINAL);
        CoralFinding buried = new CoralFinding("c", 0.2, 0.1, 0.3, 0.05, 0.5, Verdict.FAIL, Verdict.FAIL);
        assertTrue(good.inRange() && unsure.inRange() && !buried.inRange());
        double cleared = value(new Finding(List.of(good), 0, 0, 0, "", 0, true), 0.3);
        double kept = value(new Finding(List.of(buried), 0, 0, 0, "", 0, true), 0.3);
        assertTrue(cleared < kept, cleared + " and " + kept);
    }

    /** By default a later aim counts only between layouts that are alike in the earlier ones. */
    @Test
    void anEarlierAimOutweighsAllLaterOnes() {
        double best = value(finding(0.2, 0, 0, 0), 0.3);
        double fewerWatts = value(finding(0.2, 0, 0, 0), 0.6);
        double sand = value(finding(0.2, 0, 0, 1), 0.3);
        double still = value(finding(0.2, 0.1, 0, 0), 0.3);
        double uneasy = value(finding(0.055, 0, 0, 0), 0.3);
        double out = value(finding(0.045, 0, 0, 0), 0.3);
        assertTrue(best < fewerWatts && fewerWatts < sand && sand < still && still < uneasy && uneasy < out);
        assertTrue(value(finding(0.2, 0.95, 0.9, 3), 1) < value(finding(0.045, 0, 0, 0), 0.3));
        assertTrue(value(finding(0.2, 0.02, 0.9, 3), 1) < value(finding(0.2, 0.041, 0, 0), 0.3));
    }

    /** Steps of 2 % from 0: within one the next aim decides, across one the earlier does, close as the two may be. */
    @Test
    void alikeMeansInOneStep() {
        double windy = 0.5;
        assertTrue(value(finding(0.2, 0.039, 0, 0), 0.3) < value(finding(0.2, 0.021, windy, 0), 0.3), "one step");
        assertTrue(value(finding(0.2, 0.039, windy, 0), 0.3) < value(finding(0.2, 0.041, 0, 0), 0.3), "two steps");
    }

    @Test
    void whatCannotBeComputedIsLastAndWhatIsNotAllowedBeforeIt() {
        double worst = value(new Finding(Collections.nCopies(200, finding(0, 1, 1, 9).corals().get(0)), 1, 1,
                1, "", 99, false), 1);
        assertTrue(worst < Objective.refused(1e-6));
        assertTrue(Objective.refused(0.01) < Objective.refused(0.02));
        assertTrue(Objective.refused(1e9) < Objective.USUAL.value(new Outcome.Failed("x"), PIECES, PUMPS));
    }

    @Test
    void weightsAddUp() {
        Objective weighted = new Objective(Objective.Order.WEIGHTED, new Objective.Weights(10, 0, 2, 3, 0));
        Finding finding = finding(0.045, 0.25, 0.1, 0);
        assertEquals(10 + 0.5 + 0.3, weighted.value(new Outcome.Read(finding), PIECES, PUMPS), 1e-12);
    }

    /** Worse in one aim and equal in all others is never better. */
    @Test
    void neverRewardsWorse() {
        ForAll.seeds(500, random -> {
            double speed = 0.6 * random.nextDouble();
            double still = random.nextDouble();
            double strong = random.nextDouble();
            double before = value(finding(speed, still, strong, 0.5), 0.5);
            assertTrue(before <= value(finding(speed, Math.min(1, still + 0.1), strong, 0.5), 0.5));
            assertTrue(before <= value(finding(speed, still, strong + 0.1, 0.5), 0.5));
            assertTrue(before <= value(finding(speed, still, strong, 0.5), 0.6));
        });
    }
}
