package slackwater.simulation;

/**
 * How long a run may go on.
 *
 * @param mostWaterS water time at most, spin-up included; an infinite value leaves it to the flow
 */
public record RunLimits(double mostWaterS) {
    public static final RunLimits NONE = new RunLimits(Double.POSITIVE_INFINITY);
}
