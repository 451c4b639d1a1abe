package slackwater.search;

import java.util.List;
import java.util.Optional;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;

/** Invented tanks for the tests of the search. */
final class Tanks {
    static final Tank TANK = new Tank(new Vec3(1.0, 0.5, 0.5), 0.45, 0.03, 0.001);

    private Tanks() {
    }

    static Scenario with(List<Pump> pumps, List<Coral> corals) {
        return new Scenario("invented", TANK, List.of(), pumps, Optional.empty(), Optional.empty(), corals);
    }

    static Pump pump(String name, double x, double yawDeg) {
        return new Pump(name, 4000 / 3.6e6, new Outlet.Round(0.045), new Vec3(x, 0.25, 0.35), Math.toRadians(yawDeg), 0,
                0, 0.6, 0, 1, Pattern.STEADY);
    }

    static Coral coral(String name, CoralGroup group, double x, double y, double z) {
        return new Coral(name, group, new Vec3(x, y, z), new Vec3(0, 0, 1), 0.08, Optional.empty());
    }
}
