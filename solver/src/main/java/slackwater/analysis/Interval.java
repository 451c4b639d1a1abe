package slackwater.analysis;

import slackwater.scenario.SpeedRange;

/** The speeds between which the true one lies with 95 % confidence, metres per second. */
public record Interval(double lowMPerS, double highMPerS) {
    /** About a reading, and never below 0. */
    public static Interval about(double readingMPerS, Doubt doubt) {
        double half = doubt.totalMPerS();
        return new Interval(Math.max(0, readingMPerS - half), readingMPerS + half);
    }

    /** Whether all of it suits: no limit lies in it. A lower limit of 0 asks for nothing. */
    public boolean isWithin(SpeedRange wanted) {
        return (lowMPerS > wanted.lowMPerS() || wanted.lowMPerS() <= 0) && highMPerS < wanted.highMPerS();
    }

    /** Whether none of it suits. */
    public boolean isClearOf(SpeedRange wanted) {
        return highMPerS < wanted.lowMPerS() || lowMPerS > wanted.highMPerS();
    }
}
