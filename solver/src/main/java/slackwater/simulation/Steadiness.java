package slackwater.simulation;

import java.util.List;

/**
 * Whether water has settled, from the tank's mean speed in batches of about one turn: the same rules for a run and for
 * a flow that somebody watches.
 */
final class Steadiness {
    static final int LEAST_SPIN_UP = 3;
    /** Water that begins as a flow of the same pumps on other cells has found its way after one turn. */
    static final int SPIN_UP_OF_A_FLOW = 1;
    static final int MOST_SPIN_UP = 10;
    static final int LEAST_BATCHES = 6;
    /** The tank's mean speed counts as settled when it changes by less than this from batch to batch. */
    private static final double STEADY_FRACTION = 0.04;
    /** Halves of the averaging window may differ by this much in the tank's mean speed. */
    private static final double TREND_FRACTION = 0.10;

    private Steadiness() {
    }

    /** Whether averaging may begin after batches of these mean speeds. */
    static boolean spunUp(List<Double> batches) {
        int n = batches.size();
        return n >= MOST_SPIN_UP || n >= LEAST_SPIN_UP
                && change(batches.get(n - 2), batches.get(n - 1)) < STEADY_FRACTION
                && change(batches.get(n - 3), batches.get(n - 2)) < 2 * STEADY_FRACTION;
    }

    /** Whether the mean speeds of the averaged batches still go up or down. */
    static boolean trend(List<Double> batches) {
        int half = batches.size() / 2;
        double early = mean(batches.subList(0, half));
        double late = mean(batches.subList(batches.size() - half, batches.size()));
        return change(early, late) > TREND_FRACTION;
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    private static double change(double before, double after) {
        return after == 0 ? 0 : Math.abs(after - before) / after;
    }
}
