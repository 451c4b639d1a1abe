package slackwater.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit that people write, held as the exact fraction that leads to SI. A whole number of any unit is rounded
 * once, so 60 cm is the double nearest to 0.6 m.
 *
 * <p>Sources: NIST SP 811 (2008), appendix B: 1 in = 0.0254 m exactly; 1 US gallon = 231 cubic inches
 * = 3.785411784 L exactly.
 */
public enum Unit {
    CM("cm", "cm", 1, 100),
    MM("mm", "mm", 1, 1000),
    INCH("in", "in", 254, 10_000),
    LITRE_PER_HOUR("l_per_h", "L/h", 1, 3_600_000),
    GALLON_PER_HOUR("gph", "US gal/h", 3_785_411_784.0, 3.6e15),
    CM_PER_S("cm_per_s", "cm/s", 1, 100),
    INCH_PER_S("in_per_s", "in/s", 254, 10_000),
    DEGREE("deg", "degrees", Math.PI, 180),
    PERCENT("percent", "%", 1, 100),
    SECOND("s", "s", 1, 1),
    KG_PER_M3("kg_per_m3", "kg/m3", 1, 1),
    PASCAL("pa", "Pa", 1, 1),
    WATT("w", "W", 1, 1),
    NONE("", "", 1, 1);

    private static final int DIGITS_OF_A_DOUBLE = 17;

    private final String suffix;
    private final String symbol;
    private final double numerator;
    private final double denominator;

    Unit(String suffix, String symbol, double numerator, double denominator) {
        this.suffix = suffix;
        this.symbol = symbol;
        this.numerator = numerator;
        this.denominator = denominator;
    }

    /** The ending of a scenario key in this unit, without its underscore; empty for a plain number. */
    public String suffix() {
        return suffix;
    }

    /** The unit as a person writes it beside a number; empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    /**
     * The value in metres, cubic metres per second, metres per second, radians, seconds, kilograms per cubic metre,
     * pascals or as a fraction.
     */
    public double toSi(double value) {
        return value * numerator / denominator;
    }

    /**
     * The shortest decimal number in this unit that {@link #toSi} turns back into {@code si}; when there is none
     * (the value was not born in this unit), the nearest double, whose way back is off by one unit in the last place.
     */
    public double fromSi(double si) {
        double nearest = si * denominator / numerator;
        if (!Double.isFinite(nearest)) {
            return nearest;
        }
        BigDecimal exact = new BigDecimal(nearest);
        for (int digits = 1; digits <= DIGITS_OF_A_DOUBLE; digits++) {
            double rounded = exact.round(new MathContext(digits)).doubleValue();
            if (toSi(rounded) == si) {
                return rounded;
            }
        }
        return neighbourOf(nearest, si);
    }

    /** True where a number in this unit reads back as exactly {@code si}. */
    public boolean holds(double si) {
        return toSi(fromSi(si)) == si;
    }

    private double neighbourOf(double nearest, double si) {
        if (toSi(Math.nextUp(nearest)) == si) {
            return Math.nextUp(nearest);
        }
        return toSi(Math.nextDown(nearest)) == si ? Math.nextDown(nearest) : nearest;
    }
}
