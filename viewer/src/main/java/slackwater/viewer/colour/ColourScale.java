package slackwater.viewer.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * What the colours of a map stand for: a range of values and its unit.
 *
 * @param map the colours
 * @param low value of the first colour, SI
 * @param high value of the last colour, SI; above {@code low}
 * @param rooted whether colours go with the square root, so that small values show their differences; then low is 0
 * @param unit what people call the shown unit
 * @param perUnit SI values times this are in the shown unit
 */
public record ColourScale(ColourMap map, double low, double high, boolean rooted, String unit, double perUnit) {
    private static final double[] STEPS = {1, 2, 5};
    private static final int MOST_TICKS = 7;
    private static final double LEAST_GAP = 0.115;

    public ColourScale {
        if (!(high > low) || rooted && low != 0) {
            throw new IllegalArgumentException("a scale must rise, and one with roots start at 0: " + low + ", "
                    + high);
        }
    }

    /** A mark beside the colours: where it stands, 0..1, and its words. */
    public record Tick(double fraction, String text) {
    }

    /** Speeds from 0 to a top, in cm/s. */
    public static ColourScale ofSpeed(double topMPerS) {
        return new ColourScale(ColourMap.CIVIDIS, 0, topMPerS, true, "cm/s", 100);
    }

    /** Speeds from 0 to a top, in inches per second. */
    public static ColourScale ofSpeedInInches(double topMPerS) {
        return new ColourScale(ColourMap.CIVIDIS, 0, topMPerS, true, "in/s", 1 / 0.0254);
    }

    /** Wall shear from 0 to a top, in pascals. */
    public static ColourScale ofShear(double topPa) {
        return new ColourScale(ColourMap.VIRIDIS, 0, topPa, true, "Pa", 1);
    }

    /** Shares that lie on a square metre, from 0 to a top, as percent on a square decimetre. */
    public static ColourScale ofDeposit(double topPerM2) {
        return new ColourScale(ColourMap.VIRIDIS, 0, topPerM2, true, "% on a square decimetre", 1);
    }

    /** A speed's change, from as much slower to as much faster, in cm/s. */
    public static ColourScale ofDifference(double mostMPerS) {
        return new ColourScale(ColourMap.MANAGUA, -mostMPerS, mostMPerS, false, "cm/s", 100);
    }

    /** Where a value stands on the colours, 0..1. */
    public double fraction(double value) {
        double fraction = Math.max(0, Math.min(1, (value - low) / (high - low)));
        return rooted ? Math.sqrt(fraction) : fraction;
    }

    public Colour colour(double value) {
        return map.at(fraction(value));
    }

    /** Fractions of many values, one each. */
    public float[] fractions(float[] values) {
        float[] fractions = new float[values.length];
        for (int n = 0; n < values.length; n++) {
            fractions[n] = (float) fraction(values[n]);
        }
        return fractions;
    }

    /** Round values within the range, in the shown unit; the last says "+" where greater values keep its colour. */
    public List<Tick> ticks() {
        double from = low * perUnit;
        double to = high * perUnit;
        double step = step(to - from);
        List<Tick> ticks = new ArrayList<>();
        for (long n = (long) Math.ceil(from / step - 1e-9); n * step <= to * (1 + 1e-9); n++) {
            double value = n * step;
            boolean last = value + step > to * (1 + 1e-9);
            double at = fraction(value / perUnit);
            if (last && crowded(ticks, at)) {
                ticks.remove(ticks.size() - 1);
            }
            if (!crowded(ticks, at)) {
                ticks.add(new Tick(at, text(value, step) + (last && low >= 0 ? "+" : "")));
            }
        }
        return List.copyOf(ticks);
    }

    /**
     * Those ticks whose words have room below a bar; the first and the last one always.
     *
     * @param lengthUnits of the bar
     * @param gapUnits least room between two words
     * @param width of some words, in the same units
     */
    public List<Tick> ticks(double lengthUnits, double gapUnits, ToDoubleFunction<String> width) {
        List<Tick> all = ticks();
        Tick last = all.get(all.size() - 1);
        double end = last.fraction() * lengthUnits - width.applyAsDouble(last.text()) / 2;
        List<Tick> kept = new ArrayList<>();
        double taken = Double.NEGATIVE_INFINITY;
        for (Tick tick : all) {
            double half = width.applyAsDouble(tick.text()) / 2;
            double left = Math.max(0, tick.fraction() * lengthUnits - half);
            boolean room = left >= taken + gapUnits && left + 2 * half + gapUnits <= end;
            if (kept.isEmpty() || room || tick == last) {
                kept.add(tick);
                taken = left + 2 * half;
            }
        }
        return List.copyOf(kept);
    }

    /** The least of 1, 2, 5 times a power of ten that gives few enough ticks. */
    private static double step(double range) {
        double power = Math.pow(10, Math.floor(Math.log10(range)) - 1);
        while (true) {
            for (double step : STEPS) {
                if (range / (step * power) <= MOST_TICKS) {
                    return step * power;
                }
            }
            power *= 10;
        }
    }

    private static boolean crowded(List<Tick> ticks, double fraction) {
        return !ticks.isEmpty() && fraction - ticks.get(ticks.size() - 1).fraction() < LEAST_GAP;
    }

    private static String text(double value, double step) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
