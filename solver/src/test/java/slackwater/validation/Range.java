package slackwater.validation;

/** A published value, or the band that published values span. */
record Range(double low, double high) {
    static Range of(double value) {
        return new Range(value, value);
    }

    static Range atLeast(double value) {
        return new Range(value, Double.POSITIVE_INFINITY);
    }

    /** How far a value lies outside, with sign; 0 inside. */
    double outside(double value) {
        return value < low ? value - low : value > high ? value - high : 0;
    }

    /** The end of the band that is nearer to a value. */
    double nearest(double value) {
        return Double.isInfinite(high) || Math.abs(value - low) <= Math.abs(value - high) ? low : high;
    }

    @Override
    public String toString() {
        return Double.isInfinite(high) ? "at least " + Digits.of(low)
                : low == high ? Digits.of(low) : Digits.of(low) + " to " + Digits.of(high);
    }
}
