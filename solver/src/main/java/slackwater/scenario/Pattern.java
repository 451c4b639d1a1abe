package slackwater.scenario;

/**
 * How a pump's speed changes with time.
 *
 * @param kind the shape of the change
 * @param periodS time of one whole cycle, seconds; 0 for a steady pump
 * @param lowFraction share of the set output in the low part of the cycle, 0..1
 * @param phaseFraction shift of the cycle, 0..1 of a period
 */
public record Pattern(Kind kind, double periodS, double lowFraction, double phaseFraction) {
    public static final Pattern STEADY = new Pattern(Kind.STEADY, 0, 1, 0);

    /** Full, then low (pulse); low, then full, the other half of a pulse (alternate); a smooth swing (sine). */
    public enum Kind { STEADY, PULSE, SINE, ALTERNATE }
}
