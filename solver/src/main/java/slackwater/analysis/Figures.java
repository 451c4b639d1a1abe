package slackwater.analysis;

import java.util.Locale;

/** Numbers as a keeper reads them. */
public final class Figures {
    /** What a number may be above a whole one by rounding alone. */
    private static final double ROUNDING = 1e-9;

    private Figures() {
    }

    /** A speed in centimetres per second with one decimal, without its unit; "unknown" where it is not finite. */
    public static String cmPerS(double speedMPerS) {
        return Double.isFinite(speedMPerS) ? decimal(speedMPerS * 100, 1) : "unknown";
    }

    /** A reading's range in centimetres per second, rounded outwards, without its unit: it never looks too good. */
    public static String interval(Interval interval) {
        return decimal(Math.floor(interval.lowMPerS() * 1000 + 1e-9) / 10, 1) + " to "
                + decimal(Math.ceil(interval.highMPerS() * 1000 - 1e-9) / 10, 1);
    }

    /** A limit in centimetres per second without needless decimals and without its unit. */
    public static String limitCmPerS(double speedMPerS) {
        return plain(speedMPerS * 100);
    }

    /** A volume in litres, without its unit: one decimal below 10 litres, none above. */
    public static String litres(double volumeM3) {
        double litres = volumeM3 * 1000;
        return decimal(litres, litres < 9.95 ? 1 : 0);
    }

    /** A share as a percentage with its sign; "below 1 %" instead of a false zero. */
    public static String percent(double fraction) {
        return fraction > 0 && fraction < 0.01 ? "below 1 %" : decimal(fraction * 100, 0) + " %";
    }

    /** A share in whole per cent, rounded up, without its sign: the least that is enough. */
    public static String percentUp(double fraction) {
        return decimal(Math.ceil(fraction * 100 - ROUNDING), 0);
    }

    /** A length in whole centimetres, without its unit. */
    public static String cm(double lengthM) {
        return decimal(lengthM * 100, 0);
    }

    /** The edge of a cell in centimetres, with its unit, without needless decimals. */
    public static String cell(double cellSizeM) {
        return decimal(cellSizeM * 100, 2).replaceFirst("\\.?0+$", "") + " cm";
    }

    /** A number with at most one decimal, left out where it is zero. */
    public static String plain(double value) {
        double rounded = Math.rint(value * 10) / 10;
        return decimal(rounded, rounded == Math.rint(rounded) ? 0 : 1);
    }

    public static String decimal(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
