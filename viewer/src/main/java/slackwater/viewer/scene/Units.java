package slackwater.viewer.scene;

import slackwater.analysis.Figures;
import slackwater.viewer.colour.ColourScale;

/** What people read speeds in. */
public enum Units {
    METRIC("cm/s", 100), US("in/s", 1 / 0.0254);

    private final String speedUnit;
    private final double perMPerS;

    Units(String speedUnit, double perMPerS) {
        this.speedUnit = speedUnit;
        this.perMPerS = perMPerS;
    }

    /** A speed with one decimal, without its unit. */
    public String speed(double mPerS) {
        return Figures.decimal(mPerS * perMPerS, 1);
    }

    public String speedUnit() {
        return speedUnit;
    }

    public ColourScale speedScale(double topMPerS) {
        return this == METRIC ? ColourScale.ofSpeed(topMPerS) : ColourScale.ofSpeedInInches(topMPerS);
    }
}
