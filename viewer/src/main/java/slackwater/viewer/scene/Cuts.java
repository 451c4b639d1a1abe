package slackwater.viewer.scene;

import java.util.List;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;
import slackwater.viewer.shape.Axis;
import slackwater.viewer.shape.SliceSheet.Cut;

/** Slices that suit a tank. */
public final class Cuts {
    private Cuts() {
    }

    /** Half-way between front and back. */
    public static Cut front(Scenario scenario) {
        return new Cut(Axis.Y, scenario.tank().insideM().y() / 2);
    }

    /** Half-way along the tank. */
    public static Cut side(Scenario scenario) {
        return new Cut(Axis.X, scenario.tank().insideM().x() / 2);
    }

    /** At the middle height of the corals; half-way up the water without any. */
    public static Cut level(Scenario scenario) {
        Tank tank = scenario.tank();
        List<Double> heights = scenario.corals().stream().map(Coral::atM).map(Vec3::z).sorted().toList();
        return new Cut(Axis.Z, heights.isEmpty() ? (tank.sandDepthM() + tank.waterLevelM()) / 2
                : heights.get(heights.size() / 2));
    }
}
