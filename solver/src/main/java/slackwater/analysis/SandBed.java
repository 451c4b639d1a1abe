package slackwater.analysis;

/**
 * The water just above the sand against the speed that moves this sand.
 *
 * @param heightM height above the sand at which the speeds are read, near 5 cm
 * @param meanMPerS mean speed over the sand
 * @param gustMPerS the greatest gust (the speed passed 5 % of the time) over the sand
 * @param thresholdMPerS the speed at that height at which the sand begins to move
 * @param warnedShareFraction share of the sand over which gusts pass 0.8 of the threshold, 0..1
 * @param place where the greatest gust is, in words
 * @param sentence the finding in words
 */
public record SandBed(double heightM, double meanMPerS, double gustMPerS, double thresholdMPerS,
                      double warnedShareFraction, String place, String sentence) {
    /** The part of the threshold from which on a warning stands: the threshold's own data scatter 20 to 30 %. */
    public static final double WARN_FRACTION = 0.8;

    public boolean isWarning() {
        return gustMPerS > WARN_FRACTION * thresholdMPerS;
    }
}
