package slackwater.viewer.edit;

import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;

/**
 * Where in the glass something may be put.
 *
 * @param low least coordinates, metres
 * @param high greatest coordinates, metres
 */
public record Room(Vec3 low, Vec3 high) {
    /** Nobody's outlet sits nearer to the glass, the sand or the surface. */
    private static final double OUTLET_M = 0.01;

    /** Room for outlets: in the water, a centimetre off everything. */
    public static Room forOutlet(Scenario scenario) {
        Tank tank = scenario.tank();
        double edge = Math.min(OUTLET_M, (tank.waterLevelM() - tank.sandDepthM()) / 4);
        return new Room(new Vec3(edge, edge, tank.sandDepthM() + edge), new Vec3(tank.insideM().x() - edge,
                tank.insideM().y() - edge, tank.waterLevelM() - edge));
    }

    /** Room for corals: anywhere in the water, on the sand and the glass too. */
    public static Room forCoral(Scenario scenario) {
        Tank tank = scenario.tank();
        return new Room(new Vec3(0, 0, tank.sandDepthM()), new Vec3(tank.insideM().x(), tank.insideM().y(),
                tank.waterLevelM()));
    }

    /** The place itself, or the nearest one that is within. */
    public Vec3 nearest(Vec3 placeM) {
        return new Vec3(within(placeM.x(), low.x(), high.x()), within(placeM.y(), low.y(), high.y()),
                within(placeM.z(), low.z(), high.z()));
    }

    private static double within(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
