package slackwater.discretisation;

import java.util.List;
import slackwater.scenario.Pattern;

/**
 * How time is cut: steps into samples, samples into batches. A batch is a whole number of pump periods and about one
 * turn of the tank's water, so that batch means are hardly alike.
 *
 * @param timeStepS length of a step
 * @param stepsPerSample steps between two samples of the statistics
 * @param samplesPerBatch samples in a batch
 * @param wholePeriods false if the pumps' periods have no common multiple short enough; the longest is used then
 */
public record TimePlan(double timeStepS, int stepsPerSample, int samplesPerBatch, boolean wholePeriods) {
    private static final double SAMPLE_S = 0.05;
    private static final double LONGEST_COMMON_PERIOD_S = 120;
    /** Different periods are compared in these parts of a second; others have no common multiple here. */
    private static final int TICKS_PER_S = 20;

    public double sampleS() {
        return timeStepS * stepsPerSample;
    }

    public double batchS() {
        return sampleS() * samplesPerBatch;
    }

    /** With every second sample, for steady pumps: a batch may be one of the old samples longer. */
    public TimePlan thinned() {
        return new TimePlan(timeStepS, 2 * stepsPerSample, (samplesPerBatch + 1) / 2, wholePeriods);
    }

    /**
     * Cuts time so that no step is longer than given.
     *
     * @param longestStepS the longest step that the flow allows
     * @param turnS time for the water to go once about the tank
     */
    static TimePlan of(double longestStepS, double turnS, List<Pattern> patterns) {
        List<Double> periods = patterns.stream().filter(p -> p.kind() != Pattern.Kind.STEADY).map(Pattern::periodS)
                .toList();
        double common = commonPeriod(periods);
        boolean whole = !Double.isInfinite(common);
        double period = whole ? common : periods.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double batch = period == 0 ? turnS : period * Math.ceil(turnS / period);
        int stepsPerSample = (int) Math.max(1, Math.round(SAMPLE_S / longestStepS));
        int samples = (int) Math.ceil(batch / (longestStepS * stepsPerSample));
        return new TimePlan(batch / samples / stepsPerSample, stepsPerSample, samples, whole);
    }

    /** Least common multiple, seconds: 0 for no period, infinite for none short enough. */
    private static double commonPeriod(List<Double> periodsS) {
        if (periodsS.stream().distinct().count() <= 1) {
            return periodsS.isEmpty() ? 0 : periodsS.get(0);
        }
        long common = 1;
        for (double period : periodsS) {
            long ticks = Math.round(period * TICKS_PER_S);
            if (ticks < 1 || Math.abs(ticks - period * TICKS_PER_S) > 1e-6) {
                return Double.POSITIVE_INFINITY;
            }
            common = common / greatestCommonDivisor(common, ticks) * ticks;
            if (common > LONGEST_COMMON_PERIOD_S * TICKS_PER_S) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return (double) common / TICKS_PER_S;
    }

    private static long greatestCommonDivisor(long a, long b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
