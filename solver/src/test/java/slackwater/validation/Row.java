package slackwater.validation;

/**
 * One quantity of a case as the page shows it.
 *
 * @param quantity what is compared, with its unit
 * @param verdict within, or miss
 */
record Row(String quantity, String theirs, String ours, String error, String tolerance, String verdict) {
    static final String WITHIN = "within";
    static final String MISS = "miss";

    static Row of(String quantity, Range theirs, Tolerance tolerance, double ours) {
        boolean within = Math.abs(theirs.outside(ours)) <= tolerance.about(theirs, ours);
        return new Row(quantity, theirs.toString(), tolerance.print(ours), tolerance.error(theirs, ours),
                tolerance.toString(), within ? WITHIN : MISS);
    }

    /** The same row, had the solver given what another row says. */
    Row withResultOf(Row other) {
        return new Row(quantity, theirs, other.ours, other.error, tolerance, other.verdict);
    }
}
