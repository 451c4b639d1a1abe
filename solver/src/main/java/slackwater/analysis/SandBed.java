package slackwater.analysis;

/**
 * The water just above the sand against the speed that moves this sand.
 *
 * @param heightM height above the sand at which the speeds are read, near 5 cm
 * @param meanMPerS mean speed over the sand
 * @param gustMPerS the greatest gust (the speed passed 5 % of the time) over the sand
 * @param thresholdMPerS the speed at that height at which the sand begins to move
 * @param warnedShareFraction share of the sand over which gusts pass 0.8 of the threshold, 0..1
 * @param shear what the gusts do to the sand itself
 * @param place where the greatest gust is, in words
 * @param sentence the finding in words
 */
public record SandBed(double heightM, double meanMPerS, double gustMPerS, double thresholdMPerS,
                      double warnedShareFraction, Shear shear, String place, String sentence) {
    /** The part of the threshold from which on a warning stands: the threshold's own data scatter 20 to 30 %. */
    public static final double WARN_FRACTION = 0.8;

    /**
     * The shear stress on the sand against the one that moves it.
     *
     * @param gustPa the greatest gust of it (passed 5 % of the time) over the sand, pascals
     * @param thresholdPa the stress at which the sand begins to move
     * @param blownShareFraction share of the sand whose gusts pass it, 0..1
     */
    public record Shear(double gustPa, double thresholdPa, double blownShareFraction) {
        /** As a share of the threshold in terms of speed, whose square the stress is. */
        double fraction() {
            return Math.sqrt(gustPa / thresholdPa);
        }
    }

    /** The same finding in words. */
    SandBed saying(String words) {
        return new SandBed(heightM, meanMPerS, gustMPerS, thresholdMPerS, warnedShareFraction, shear, place, words);
    }

    /** How near the strongest place comes to moving, by speed or by stress, whichever is worse; at 1 the sand moves. */
    public double fraction() {
        return Math.max(gustMPerS / thresholdMPerS, shear.fraction());
    }

    public boolean isWarning() {
        return fraction() > WARN_FRACTION;
    }
}
