package slackwater.analysis;

import slackwater.field.FlowStatistics;

/**
 * How still each cell is. A gust is the speed passed 5 % of the time, taken as mean + 1.645 standard deviations
 * (the 95th percentile of a normal distribution: an assumption, good to about a tenth in such flows).
 */
public final class Stillness {
    private static final double GUST_DEVIATIONS = 1.645;
    private static final double DOUBT = 2;

    private final FlowStatistics flow;

    public Stillness(FlowStatistics flow) {
        this.flow = flow;
    }

    /** Still at its reading. */
    public boolean isStill(int cell) {
        return isStill(cell, 0);
    }

    /** Still even if the true mean were two standard errors faster. */
    public boolean isSurelyStill(int cell) {
        return isStill(cell, DOUBT);
    }

    /** Still if the true mean were two standard errors slower. */
    public boolean isPossiblyStill(int cell) {
        return isStill(cell, -DOUBT);
    }

    /** Mean speed of a cell plus its gusts, metres per second. */
    double gustMPerS(int cell) {
        double mean = flow.meanSpeed()[cell];
        double rms = flow.rmsSpeed()[cell];
        return mean + GUST_DEVIATIONS * Math.sqrt(Math.max(0, rms * rms - mean * mean));
    }

    private boolean isStill(int cell, double errors) {
        double shift = errors * flow.standardErrorSpeed()[cell];
        return flow.fluid()[cell]
                && flow.meanSpeed()[cell] + shift < StillWater.MEAN_LIMIT_M_PER_S
                && gustMPerS(cell) + shift < StillWater.GUST_LIMIT_M_PER_S;
    }
}
