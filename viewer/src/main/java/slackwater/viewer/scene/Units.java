package slackwater.viewer.scene;

import java.util.List;
import java.util.regex.Pattern;
import slackwater.analysis.Figures;
import slackwater.viewer.colour.ColourScale;

/** What people read speeds in. */
public enum Units {
    METRIC("cm/s", 100, "l/h", 3.6e6, "cm",
            List.of(new Ruler(0.1, "10 cm"), new Ruler(0.05, "5 cm"), new Ruler(0.02, "2 cm"))),
    US("in/s", 1 / 0.0254, "gal/h", 3.6e6 / 3.785411784, "in", List.of(new Ruler(4 * 0.0254, "4 in"),
            new Ruler(2 * 0.0254, "2 in"), new Ruler(0.0254, "1 in")));

    private static final Pattern LENGTHS = Pattern.compile("(?:[-0-9.]+|\\[[-0-9., ]+\\]|x [-0-9.]+, y [-0-9.]+,"
            + " z [-0-9.]+|[-0-9.]+ (?:to|and) [-0-9.]+) cm\\b(?!/)");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");
    private static final double CM_PER_IN = 2.54;

    private final String speedUnit;
    private final double perMPerS;
    private final String flowUnit;
    private final double perM3PerS;
    private final String lengthUnit;
    private final List<Ruler> rulers;

    Units(String speedUnit, double perMPerS, String flowUnit, double perM3PerS, String lengthUnit,
          List<Ruler> rulers) {
        this.speedUnit = speedUnit;
        this.perMPerS = perMPerS;
        this.flowUnit = flowUnit;
        this.perM3PerS = perM3PerS;
        this.lengthUnit = lengthUnit;
        this.rulers = rulers;
    }

    /**
     * A length to show others by.
     *
     * @param words what stands beside it
     */
    public record Ruler(double lengthM, String words) {
    }

    /** The longest first. */
    public List<Ruler> rulers() {
        return rulers;
    }

    /** The edge of a cell, or another small length, with at most two decimals and its unit. */
    public String length(double lengthM) {
        return Figures.decimal(lengthM * perMPerS, 2).replaceFirst("\\.?0+$", "") + " " + lengthUnit;
    }

    /** A sentence with its lengths in these units; sentences are made with centimetres. */
    public String sentence(String metric) {
        return this == METRIC ? metric : LENGTHS.matcher(metric).replaceAll(lengths -> NUMBER.matcher(lengths.group()
                .replaceFirst("cm$", "in")).replaceAll(number -> Figures.decimal(Double.parseDouble(number.group())
                / CM_PER_IN, 2).replaceFirst("\\.?0+$", "")));
    }

    /** A flow without decimals, with its unit: litres or US gallons per hour. */
    public String flow(double m3PerS) {
        return Figures.decimal(m3PerS * perM3PerS, 0) + " " + flowUnit;
    }

    /** A speed with one decimal, without its unit. */
    public String speed(double mPerS) {
        return Figures.decimal(mPerS * perMPerS, 1);
    }

    /** A speed as a number of its unit. */
    public double speedNumber(double mPerS) {
        return mPerS * perMPerS;
    }

    /** A number of the speed's unit, metres per second. */
    public double speedMPerS(double number) {
        return number / perMPerS;
    }

    public String speedUnit() {
        return speedUnit;
    }

    public ColourScale speedScale(double topMPerS) {
        return this == METRIC ? ColourScale.ofSpeed(topMPerS) : ColourScale.ofSpeedInInches(topMPerS);
    }
}
