package slackwater.report;

import slackwater.field.FlowStatistics;

/**
 * What the colours of a picture say.
 *
 * @param values one value a cell, shown times 100
 * @param top the value that ends the colours
 * @param rooted whether colours go with the square root, so that small values show their differences
 * @param ticks values to write beside the colours
 * @param unit of the values times 100
 * @param over what stands after the top value where greater ones keep its colour
 */
record Colouring(float[] values, double top, boolean rooted, double[] ticks, String unit, String over) {
    private static final double[] SPEEDS_M_PER_S = {0, 0.01, 0.02, 0.05, 0.08, 0.10, 0.12, 0.15, 0.20, 0.25, 0.30, 0.40,
        0.50, 0.60, 0.80, 1.0, 1.5, 2.0, 3.0};
    private static final double[] SHARES = {0, 0.25, 0.5, 0.75, 1};

    static Colouring ofSpeed(FlowStatistics flow, Scale scale) {
        return new Colouring(flow.meanSpeed(), scale.topMPerS(), true, SPEEDS_M_PER_S, "cm/s", "+");
    }

    static Colouring ofProbability(float[] probability) {
        return new Colouring(probability, 1, false, SHARES, "%", "");
    }

    /** Where a value stands on the colours, 0..1. */
    double fraction(double value) {
        double fraction = Math.max(0, Math.min(1, value / top));
        return rooted ? Math.sqrt(fraction) : fraction;
    }
}
