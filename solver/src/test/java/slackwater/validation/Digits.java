package slackwater.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as the page prints them. */
final class Digits {
    private static final MathContext FOUR = new MathContext(4);
    private static final MathContext TWO = new MathContext(2);

    private Digits() {
    }

    /** Four significant digits. */
    static String of(double value) {
        return print(value, FOUR);
    }

    /** To a hundredth of the size of a tolerance: what lies below is rounding. */
    static String of(double value, double tolerance) {
        int places = 2 - (int) Math.floor(Math.log10(tolerance));
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A share in per cent, two significant digits. */
    static String percent(double share) {
        return print(100 * share, TWO) + " %";
    }

    private static String print(double value, MathContext digits) {
        if (value == 0) {
            return "0";
        }
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(digits);
        return Math.abs(value) < 1e-4 ? rounded.stripTrailingZeros().toString()
                : rounded.stripTrailingZeros().toPlainString();
    }
}
