package slackwater.analysis;

import slackwater.field.FlowStatistics;
import slackwater.field.Normal;

/**
 * How still each cell is. A gust is the speed passed 5 % of the time, taken as mean + 1.645 standard deviations
 * (the 95th percentile of a normal distribution: an assumption, good to about a tenth in such flows).
 */
final class Stillness {
    private static final double GUST_DEVIATIONS = 1.645;
    /** Pumps' outputs to go through, equally likely ones. */
    private static final int OUTPUTS = 9;

    private final FlowStatistics flow;

    Stillness(FlowStatistics flow) {
        this.flow = flow;
    }

    /** Mean speed of a cell plus its gusts, metres per second. */
    double gustMPerS(int cell) {
        return flow.meanSpeed()[cell] + gustinessMPerS(cell);
    }

    /**
     * The probability that each cell's water stands still, 0..1 and 0 outside the water: that its true mean speed and
     * gusts lie below their limits. The true mean is taken as normal about the reading, with the standard error and the
     * grid's part as its deviation. Pumps that are off scale mean and gusts alike, so a limit is met at limit/scale.
     *
     * @param gridMPerS the grid's part of each cell, metres per second
     * @param pumpFraction how far the pumps may be off, as a share, 95 %
     */
    float[] probability(float[] gridMPerS, double pumpFraction) {
        double[] outputs = outputs(pumpFraction);
        float[] probability = new float[flow.grid().cells()];
        for (int cell = 0; cell < probability.length; cell++) {
            if (flow.fluid()[cell]) {
                double deviation = Math.hypot(flow.standardErrorSpeed()[cell], gridMPerS[cell]);
                double sum = 0;
                for (double output : outputs) {
                    sum += below(limitMPerS(cell, output) - flow.meanSpeed()[cell], deviation);
                }
                probability[cell] = (float) (sum / outputs.length);
            }
        }
        return probability;
    }

    /** The mean speed at which one of the two limits is met, with the pumps at a multiple of their output. */
    private double limitMPerS(int cell, double output) {
        return Math.min(StillWater.MEAN_LIMIT_M_PER_S / output,
                StillWater.GUST_LIMIT_M_PER_S / output - gustinessMPerS(cell));
    }

    private double gustinessMPerS(int cell) {
        double mean = flow.meanSpeed()[cell];
        double rms = flow.rmsSpeed()[cell];
        return GUST_DEVIATIONS * Math.sqrt(Math.max(0, rms * rms - mean * mean));
    }

    private static double below(double room, double deviation) {
        if (deviation == 0) {
            return room > 0 ? 1 : 0;
        }
        return Normal.shareBelow(room / deviation);
    }

    private static double[] outputs(double pumpFraction) {
        if (pumpFraction == 0) {
            return new double[] {1};
        }
        double[] outputs = new double[OUTPUTS];
        for (int n = 0; n < OUTPUTS; n++) {
            outputs[n] = 1 + pumpFraction / Normal.HALF_OF_95 * Normal.quantile((n + 0.5) / OUTPUTS);
        }
        return outputs;
    }
}
