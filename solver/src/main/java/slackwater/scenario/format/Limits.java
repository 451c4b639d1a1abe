package slackwater.scenario.format;

import slackwater.units.Unit;

/**
 * What a number may be, in the metric unit of its key.
 *
 * @param low the least value
 * @param lowAllowed whether the least value itself is allowed
 * @param high the greatest value, itself allowed
 * @param typical a usual range
 */
public record Limits(double low, boolean lowAllowed, double high, Typical typical) {
    /** The range that most people's values lie in; {@code NONE} where there is none. */
    public record Typical(double low, double high) {
        static final Typical NONE = new Typical(Double.NaN, Double.NaN);
    }

    public static Limits between(double low, double high) {
        return new Limits(low, true, high, Typical.NONE);
    }

    public static Limits above(double low, double high) {
        return new Limits(low, false, high, Typical.NONE);
    }

    public Limits typically(double from, double to) {
        return new Limits(low, lowAllowed, high, new Typical(from, to));
    }

    /** True where the value, in the metric unit, is allowed. */
    boolean allow(double value) {
        return (lowAllowed ? value >= low : value > low) && value <= high;
    }

    /** What the value broke: "must be above 0 (typical 500 to 20000)", in the unit that the person used. */
    String brokenBy(double value, Unit metric, Unit used) {
        String must = value > high ? "at most " + in(high, metric, used) : atLeast(metric, used);
        return "must be " + must + typically(metric, used);
    }

    /** The whole range in words, for the format's page. */
    String words(Unit metric) {
        String symbol = metric.symbol().isEmpty() ? "" : " " + metric.symbol();
        return (lowAllowed ? "" : "above ") + Shown.number(low) + " to " + Shown.number(high) + symbol
                + typically(metric, metric);
    }

    private String atLeast(Unit metric, Unit used) {
        return (lowAllowed ? "at least " : "above ") + in(low, metric, used);
    }

    private String typically(Unit metric, Unit used) {
        return typical == Typical.NONE ? ""
                : " (typical " + in(typical.low, metric, used) + " to " + in(typical.high, metric, used) + ")";
    }

    private static String in(double value, Unit metric, Unit used) {
        return metric == used ? Shown.number(value) : Shown.about(used.fromSi(metric.toSi(value)));
    }
}
