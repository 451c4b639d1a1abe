package slackwater.detritus;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How fast a coral is cleared of what lies on it.
 *
 * @param coral its number in the scenario
 * @param shearPa the water's shear stress on it, mean in time, pascals
 * @param gustShearPa the stress that is passed 5 % of the time
 * @param liftPa the stress that lifts a middling grain from it
 * @param grain what was spread over it
 * @param courses the same with grains that lift more easily, as they are, and less easily: what the thresholds' own
 *     doubt, and that of the speed, make of it
 */
public record Clearance(int coral, double shearPa, double gustShearPa, double liftPa, Grain grain,
                        List<Course> courses) {
    /** A factor of two is what thresholds, for food, are known to. */
    private static final double THRESHOLD_DOUBT = 2;
    /** A speed that may be 0 is taken as one that is wrong by this factor: 400 times less stress lifts nothing. */
    private static final double MOST_SPEED_FACTOR = 20;
    static final int TRIES = 3;
    /** For how long a coral is watched, seconds; what still lies there then stays. Common practice, no source. */
    public static final double WATCHED_S = 300;
    /** A coral counts as clear when this share has left. */
    public static final double CLEAR = 0.95;

    /**
     * One try.
     *
     * @param hold multiple of the thresholds
     * @param halfS time until half had left, seconds; empty if it had not at the end
     * @param clearS time until 95 % had left
     * @param leftFraction what was still on the coral at the end, 0..1
     */
    public record Course(double hold, OptionalDouble halfS, OptionalDouble clearS, double leftFraction) {
    }

    /** What the tries come to. */
    public enum Outcome { CLEARS, UNSURE, STAYS }

    /**
     * Multiples of the thresholds that are tried: as they are, and beside that what the doubt of thresholds and that of
     * the speed make of it, which have nothing to do with each other. The stress goes with the square of the speed, so
     * the logarithms of 2 and of (1 +- doubt)^2 add up as the root of their squares.
     *
     * @param speedDoubt half the width of the 95 % range of the speed on the coral, as a share of it; 0 or more
     */
    static List<Double> holds(double speedDoubt) {
        return List.of(1 / together(Math.min(MOST_SPEED_FACTOR, 1 + speedDoubt)), 1.0,
                together(Math.max(1 / MOST_SPEED_FACTOR, 1 - speedDoubt)));
    }

    private static double together(double speedFactor) {
        return Math.exp(Math.hypot(Math.log(THRESHOLD_DOUBT), 2 * Math.log(speedFactor)));
    }

    /** CLEARS or STAYS only where every try says so; what stays is half or more. */
    public Outcome outcome() {
        if (courses.stream().allMatch(course -> course.clearS().isPresent())) {
            return Outcome.CLEARS;
        }
        return courses.stream().allMatch(course -> course.halfS().isEmpty()) ? Outcome.STAYS : Outcome.UNSURE;
    }

    /** The try with the thresholds as they are. */
    public Course likely() {
        return courses.get(1);
    }
}
