package slackwater.viewer.scene;

import slackwater.analysis.Figures;
import slackwater.viewer.colour.ColourScale;

/** What people read speeds in. */
public enum Units {
    METRIC("cm/s", 100, "l/h", 3.6e6), US("in/s", 1 / 0.0254, "gal/h", 3.6e6 / 3.785411784);

    private final String speedUnit;
    private final double perMPerS;
    private final String flowUnit;
    private final double perM3PerS;

    Units(String speedUnit, double perMPerS, String flowUnit, double perM3PerS) {
        this.speedUnit = speedUnit;
        this.perMPerS = perMPerS;
        this.flowUnit = flowUnit;
        this.perM3PerS = perM3PerS;
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
