package slackwater.analysis;

import slackwater.scenario.Coral;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;

/** One coral's verdict and the sentence that goes with it. */
final class CoralJudge {
    /** Flume experiments class anything below as still (Nakamura and Yamasaki 2005, Mar. Pollut. Bull. 50). */
    private static final double LYING_M_PER_S = 0.03;

    private CoralJudge() {
    }

    static CoralReading judge(Scenario scenario, Coral coral, Reading reading, boolean settled, double cellSizeM) {
        SpeedRange range = CoralNeeds.rangeFor(coral);
        Verdict verdict = verdict(reading, range, settled);
        String sentence = Figures.cmPerS(reading.meanMPerS()) + " cm/s: "
                + meaning(new Reasons(scenario, coral, cellSizeM), reading, range, verdict)
                + (settled ? "" : "; the water had not settled yet, so take it as a first look");
        return new CoralReading(coral, reading, range, verdict, sentence);
    }

    static Verdict verdict(Reading reading, SpeedRange range, boolean settled) {
        double toLow = reading.meanMPerS() - range.lowMPerS();
        double toHigh = range.highMPerS() - reading.meanMPerS();
        if (Math.abs(toLow) <= reading.marginMPerS() || Math.abs(toHigh) <= reading.marginMPerS()) {
            return Verdict.MARGINAL;
        }
        if (toLow < 0 || toHigh < 0) {
            return Verdict.FAIL;
        }
        return settled ? Verdict.PASS : Verdict.MARGINAL;
    }

    private static String meaning(Reasons reasons, Reading reading, SpeedRange range, Verdict verdict) {
        if (Double.isInfinite(reading.marginMPerS())) {
            return "watched for too short a time to say how sure that is";
        }
        double toLow = reading.meanMPerS() - range.lowMPerS();
        double toHigh = range.highMPerS() - reading.meanMPerS();
        boolean slow = Math.abs(toLow) < Math.abs(toHigh);
        String limit = Figures.limitCmPerS(slow ? range.lowMPerS() : range.highMPerS()) + " cm/s";
        if (verdict == Verdict.FAIL) {
            return slow ? tooSlow(reading, limit) + "; " + reasons.slow()
                    : "more than the " + limit + " that it is kept in; " + reasons.strong();
        }
        if (Math.min(Math.abs(toLow), Math.abs(toHigh)) > reading.marginMPerS()) {
            return "enough to carry off sand and leftovers, and not too strong";
        }
        return slow ? "too close to its lower limit of " + limit + " to be sure; " + reasons.slow()
                : "too close to its upper limit of " + limit + " to be sure; " + reasons.strong();
    }

    private static String tooSlow(Reading reading, String limit) {
        return reading.meanMPerS() < LYING_M_PER_S ? "food and sand will lie on it"
                : "less than the " + limit + " that keep it clean";
    }
}
