package slackwater.search;

import slackwater.analysis.CoralReading;
import slackwater.analysis.Verdict;

/**
 * What a trial found at one coral, metres per second.
 *
 * @param name the coral
 * @param meanMPerS mean speed
 * @param lowMPerS lower end of its 95 % range
 * @param highMPerS upper end of it; large where a short run cannot tell
 * @param wantedLowMPerS slowest that the coral wants
 * @param wantedHighMPerS fastest that it wants
 * @param verdict in the words of {@link Verdict}; screening runs are too short for a PASS
 * @param clearing of that what food, on plates sand too, does on it; NONE where no grains were let fall
 */
public record CoralFinding(String name, double meanMPerS, double lowMPerS, double highMPerS, double wantedLowMPerS,
                           double wantedHighMPerS, Verdict verdict, Verdict clearing) {
    private static final double UNKNOWN_M_PER_S = 99;

    /** Of the speed alone. */
    public CoralFinding(String name, double meanMPerS, double lowMPerS, double highMPerS, double wantedLowMPerS,
                        double wantedHighMPerS, Verdict verdict) {
        this(name, meanMPerS, lowMPerS, highMPerS, wantedLowMPerS, wantedHighMPerS, verdict, Verdict.NONE);
    }

    /** The finding of a coral's reading. */
    public static CoralFinding of(CoralReading coral) {
        return new CoralFinding(coral.coral().name(), coral.reading().meanMPerS(), coral.interval().lowMPerS(),
                Math.min(UNKNOWN_M_PER_S, coral.interval().highMPerS()), coral.range().lowMPerS(),
                coral.range().highMPerS(), coral.verdict(), coral.clearing());
    }

    /** A coral without any water movement, or without water. */
    public static CoralFinding still(String name, double wantedLowMPerS, double wantedHighMPerS) {
        return new CoralFinding(name, 0, 0, 0, wantedLowMPerS, wantedHighMPerS,
                wantedLowMPerS > 0 ? Verdict.FAIL : Verdict.PASS);
    }

    /** Whether the mean is what the coral wants, and what falls on it does not stay. */
    public boolean inRange() {
        return isInRange(meanMPerS) && !isBuried();
    }

    /** Whether food, or sand on a plate, stays on a coral that cannot clean itself; only where grains were let fall. */
    public boolean isBuried() {
        return clearing == Verdict.FAIL;
    }

    boolean isInRange(double meanMPerS) {
        return meanMPerS >= wantedLowMPerS && meanMPerS <= wantedHighMPerS;
    }

    /**
     * How far the mean is from where a fifth more or less does no harm, as a share of that limit; 0 within. A range too
     * narrow for a fifth both ways asks for its geometric middle.
     */
    double discomfort() {
        double low = wantedLowMPerS / (1 - Sturdiness.WEAKER_FRACTION);
        double high = wantedHighMPerS * (1 - Sturdiness.WEAKER_FRACTION);
        if (low > high) {
            low = Math.sqrt(wantedLowMPerS * wantedHighMPerS);
            high = low;
        }
        return meanMPerS < low ? 1 - meanMPerS / low : Math.max(0, meanMPerS / high - 1);
    }
}
