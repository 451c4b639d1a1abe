package slackwater.analysis;

import java.util.List;
import slackwater.detritus.Clearance;
import slackwater.scenario.Coral;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;

/** One coral's verdict and the sentence that goes with it. */
final class CoralJudge {
    /** Flume experiments class anything below as still (Nakamura and Yamasaki 2005, Mar. Pollut. Bull. 50). */
    private static final double LYING_M_PER_S = 0.03;

    private final Scenario scenario;
    private final boolean settled;
    private final double cellSizeM;

    CoralJudge(Scenario scenario, boolean settled, double cellSizeM) {
        this.scenario = scenario;
        this.settled = settled;
        this.cellSizeM = cellSizeM;
    }

    /** @param clearances how fast food and sand leave it; may be empty */
    CoralReading judge(Coral coral, Reading reading, Doubt doubt, List<Clearance> clearances) {
        SpeedRange wanted = CoralNeeds.rangeFor(coral);
        Interval interval = Interval.about(reading.meanMPerS(), doubt);
        String sentence = Figures.cmPerS(reading.meanMPerS()) + " cm/s: "
                + meaning(new Reasons(scenario, coral, cellSizeM), reading.meanMPerS(), interval, wanted,
                !clearances.isEmpty())
                + (settled ? "" : "; the water had not settled yet, so take it as a first look")
                + ClearanceWords.of(coral, clearances);
        Verdict verdict = verdict(interval, wanted, settled).worseOf(ClearanceWords.verdict(coral, clearances));
        return new CoralReading(coral, reading, doubt, wanted, verdict, sentence, clearances);
    }

    static Verdict verdict(Interval interval, SpeedRange wanted, boolean settled) {
        if (interval.isClearOf(wanted)) {
            return Verdict.FAIL;
        }
        return settled && interval.isWithin(wanted) ? Verdict.PASS : Verdict.MARGINAL;
    }

    /** @param tried whether grains tell what lies on the coral, so that the speed need not */
    private static String meaning(Reasons reasons, double meanMPerS, Interval interval, SpeedRange wanted,
                                  boolean tried) {
        if (Double.isInfinite(interval.highMPerS())) {
            return "watched for too short a time to say how sure that is";
        }
        boolean slow = Math.abs(meanMPerS - wanted.lowMPerS()) < Math.abs(wanted.highMPerS() - meanMPerS);
        String limit = Figures.limitCmPerS(slow ? wanted.lowMPerS() : wanted.highMPerS()) + " cm/s";
        if (interval.isClearOf(wanted)) {
            return slow ? tooSlow(meanMPerS, limit, tried) + "; " + reasons.slow()
                    : "more than the " + limit + " that it is kept in; " + reasons.strong();
        }
        if (interval.isWithin(wanted)) {
            return tried ? "within what it is kept in" : "enough to carry off sand and leftovers, and not too strong";
        }
        boolean low = interval.lowMPerS() <= wanted.lowMPerS();
        if (low && interval.highMPerS() >= wanted.highMPerS()) {
            return "so uncertain that both limits lie within the doubt";
        }
        return low ? "too close to its lower limit of " + Figures.limitCmPerS(wanted.lowMPerS())
                + " cm/s to be sure; " + reasons.slow()
                : "too close to its upper limit of " + Figures.limitCmPerS(wanted.highMPerS())
                + " cm/s to be sure; " + reasons.strong();
    }

    private static String tooSlow(double meanMPerS, String limit, boolean tried) {
        if (tried) {
            return "less than the " + limit + " that it is kept in";
        }
        return meanMPerS < LYING_M_PER_S ? "food and sand will lie on it" : "less than the " + limit
                + " that keep it clean";
    }
}
