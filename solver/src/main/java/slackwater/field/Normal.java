package slackwater.field;

import org.apache.commons.math3.distribution.NormalDistribution;

/** The standard normal distribution. */
public final class Normal {
    /** Half the width of the middle 95 %, in standard deviations. */
    public static final double HALF_OF_95 = 1.959964;
    private static final NormalDistribution STANDARD = new NormalDistribution();

    private Normal() {
    }

    /** The share below a value that is given in standard deviations, 0..1. */
    public static double shareBelow(double deviations) {
        return STANDARD.cumulativeProbability(deviations);
    }

    /** The value, in standard deviations, that a share of 0..1 lies below. */
    public static double quantile(double share) {
        return STANDARD.inverseCumulativeProbability(share);
    }
}
