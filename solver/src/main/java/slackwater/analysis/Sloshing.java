package slackwater.analysis;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Vec3;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

/**
 * The standing waves of a tank, and pumps that pulse in time with one: then each pulse adds to the wave, until it slops
 * over or loads the panes. Linear waves in a box of still water without rock; rock lengthens the periods by a few per
 * cent (from memory).
 */
public final class Sloshing {
    private static final double GRAVITY_M_PER_S2 = 9.81;
    /** In time means within this: rock and the height of the wave move the periods by some per cent. */
    private static final double NEAR_FRACTION = 0.10;
    private static final int MODES = 3;
    /** What a reader of the warnings should know of them. */
    public static final String NOTE = "The time of a wave is that of still water in an empty box (Lamb 1932); rock"
            + " makes it a few per cent longer. In this computation the surface is a flat lid, so the wave itself is"
            + " not in the speeds.";

    private Sloshing() {
    }

    /**
     * Period of a standing wave, seconds: (2 pi/T)^2 = g k tanh(k h) with k = n pi/L [Lamb1932].
     *
     * @param lengthM L, from pane to pane, metres
     * @param depthM h, from sand to surface, metres
     * @param mode n, how many half waves fit into the length, from 1
     */
    public static double periodS(double lengthM, double depthM, int mode) {
        double k = mode * Math.PI / lengthM;
        return 2 * Math.PI / Math.sqrt(GRAVITY_M_PER_S2 * k * Math.tanh(k * depthM));
    }

    /** A sentence for each pump that pulses in time with a wave along or across the tank; mostly none. */
    public static List<String> warnings(Scenario scenario) {
        List<String> warnings = new ArrayList<>();
        Vec3 inside = scenario.tank().insideM();
        double depth = scenario.tank().waterLevelM() - scenario.tank().sandDepthM();
        for (Pump pump : scenario.pumps()) {
            if (pump.pattern().kind() != Pattern.Kind.STEADY) {
                warn(pump, "along", inside.x(), depth, warnings);
                warn(pump, "across", inside.y(), depth, warnings);
            }
        }
        return List.copyOf(warnings);
    }

    private static void warn(Pump pump, String way, double lengthM, double depthM, List<String> warnings) {
        double period = pump.pattern().periodS();
        for (int mode = 1; mode <= MODES; mode++) {
            double wave = periodS(lengthM, depthM, mode);
            boolean twice = mode == 1 && isNear(2 * period, wave);
            if (isNear(period, wave) || twice) {
                warnings.add("Pump '" + pump.name() + "' pulses every " + Figures.decimal(period, 2) + " s, "
                        + (twice ? "twice in each swing of" : "in time with") + " the wave that goes " + way
                        + " the tank in " + Figures.decimal(wave, 2) + " s: the water may rock higher and higher and"
                        + " load the panes. Take a period that is at least a tenth away.");
                return;
            }
        }
    }

    private static boolean isNear(double period, double wave) {
        return Math.abs(period - wave) <= NEAR_FRACTION * wave;
    }
}
