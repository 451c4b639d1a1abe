package slackwater.search;

import java.util.Locale;
import slackwater.scenario.Pump;
import slackwater.scenario.Tank;
import slackwater.scenario.Wall;

/** A pump's place as one mounts it: pane, distances, aim against straight in. */
public final class PumpWords {
    private PumpWords() {
    }

    /** One line, without the pump's name. */
    public static String of(Tank tank, Pump pump) {
        Wall pane = Pane.nearest(tank, pump.atM());
        boolean side = pane == Wall.LEFT || pane == Wall.RIGHT;
        double yawDeg = Math.toDegrees(Math.IEEEremainder(pump.yawRad() - Pane.inwardYawRad(pane), 2 * Math.PI));
        double pitchDeg = Math.toDegrees(pump.pitchRad());
        return String.format(Locale.ROOT, "%s pane, %.0f cm from its %s end, outlet %.0f cm above the bottom and %.0f"
                + " cm off the glass; aim %s, %s; output %.0f %%", pane.name().toLowerCase(Locale.ROOT),
                Pane.alongM(pane, pump.atM()) * 100, side ? "front" : "left", pump.atM().z() * 100,
                Pane.offM(tank, pane, pump.atM()) * 100, sideways(pane, yawDeg), upwards(pitchDeg),
                pump.outputFraction() * 100);
    }

    /** Sideways in words of the room, seen from before the tank. */
    private static String sideways(Wall pane, double yawDeg) {
        if (Math.abs(yawDeg) < 0.5) {
            return "straight in";
        }
        String towards = switch (pane) {
            case LEFT -> yawDeg > 0 ? "back" : "front";
            case RIGHT -> yawDeg > 0 ? "front" : "back";
            case FRONT -> yawDeg > 0 ? "left" : "right";
            case BACK -> yawDeg > 0 ? "right" : "left";
        };
        return String.format(Locale.ROOT, "%.0f degrees to the %s", Math.abs(yawDeg), towards);
    }

    private static String upwards(double pitchDeg) {
        return Math.abs(pitchDeg) < 0.5 ? "level"
                : String.format(Locale.ROOT, "%.0f degrees %s", Math.abs(pitchDeg), pitchDeg > 0 ? "up" : "down");
    }
}
