package slackwater.viewer.scene;

import java.util.List;
import java.util.Optional;
import slackwater.analysis.CoralReading;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;

/**
 * A tank to look at.
 *
 * @param scenario what stands in it
 * @param water what its water does; empty for a layout that has not been computed
 * @param readings one a coral, in the order of the scenario; empty without water
 */
public record Scene(Scenario scenario, Optional<Water> water, List<CoralReading> readings) {
    public Scene {
        readings = List.copyOf(readings);
        if (!readings.isEmpty() && readings.size() != scenario.corals().size()) {
            throw new IllegalArgumentException("there must be one reading a coral: " + readings.size() + " for "
                    + scenario.corals().size());
        }
    }

    /** A layout alone. */
    public static Scene of(Scenario scenario) {
        return new Scene(scenario, Optional.empty(), List.of());
    }

    /** The inside of the glass, metres. */
    public Bounds glassM() {
        return new Bounds(Vec3.ZERO, scenario.tank().insideM());
    }

    /** The same scene with other water. */
    public Scene with(Water other) {
        return new Scene(scenario, Optional.of(other), readings);
    }
}
