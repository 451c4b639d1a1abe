package slackwater.validation;

/** How far a result may lie outside a published range: a share of its nearer end, or a plain number. */
record Tolerance(double size, boolean relative) {
    static Tolerance share(double size) {
        return new Tolerance(size, true);
    }

    static Tolerance plain(double size) {
        return new Tolerance(size, false);
    }

    /** As a plain number, for a result. */
    double about(Range theirs, double ours) {
        return relative ? size * Math.abs(theirs.nearest(ours)) : size;
    }

    /** The error of a result in the tolerance's own measure. */
    String error(Range theirs, double ours) {
        double outside = theirs.outside(ours);
        return relative ? Digits.percent(outside / Math.abs(theirs.nearest(ours))) : Digits.of(outside, size);
    }

    /** A result to as many digits as tell something. */
    String print(double ours) {
        return relative ? Digits.of(ours) : Digits.of(ours, size);
    }

    @Override
    public String toString() {
        return relative ? Digits.percent(size) : Digits.of(size);
    }
}
