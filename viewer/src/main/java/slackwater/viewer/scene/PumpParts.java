package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Vec3;
import slackwater.pump.JetSource;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pump;
import slackwater.scenario.Return;
import slackwater.scenario.Scenario;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.shape.JetCone;
import slackwater.viewer.shape.Polylines;
import slackwater.viewer.shape.Solids;
import slackwater.viewer.shape.Surface;
import slackwater.viewer.shape.Turned;
import slackwater.viewer.shape.Turned.Ring;

/** Pumps and the return as bodies, and their aims as the cones that free jets would fill. */
public final class PumpParts {
    /** Speed on the axis of a free jet times distance over root M: 6.5 to 7.1 (docs/numerics.md, "Jet law"). */
    private static final double DECAY = 6.7;
    /** A cone ends where a free jet would have slowed down to this. */
    private static final double CONE_ENDS_M_PER_S = 0.1;
    private static final double LEAST_CONE_M = 0.05;
    private static final double BODY_LENGTHS = 1.25;
    private static final double WALL = 1.18;
    private static final double CONE_OPACITY = 0.055;

    private PumpParts() {
    }

    /** Bodies, and cones if asked for. */
    public static List<Item> of(Scenario scenario, boolean withCones) {
        List<Item> items = new ArrayList<>();
        for (Pump pump : scenario.pumps()) {
            items.addAll(pump(pump, scenario.tank().insideM(), withCones));
        }
        scenario.returnLine().ifPresent(line -> items.addAll(nozzle(line, scenario.tank().insideM(), withCones)));
        return items;
    }

    /** One pump: its body behind the outlet, and its cone unless it is off. */
    public static List<Item> pump(Pump pump, Vec3 insideM, boolean withCone) {
        JetSource jet = JetSource.of(pump);
        JetCone cone = pump.outlet() instanceof Outlet.Slot slot
                ? new JetCone(pump.atM(), jet.aim(), jet.across(), slot.widthM() / 2, slot.heightM() / 2)
                : round(pump.atM(), jet, ((Outlet.Round) pump.outlet()).diameterM());
        List<Item> items = new ArrayList<>(List.of(Body.of(body(cone), Paint.flat(Palette.PUMP, 0.8))));
        if (withCone && jet.momentumFluxM4PerS2() > 0) {
            items.addAll(cone(cone, jet, insideM));
        }
        return items;
    }

    private static List<Item> nozzle(Return line, Vec3 insideM, boolean withCone) {
        JetSource jet = JetSource.of(line);
        JetCone cone = round(line.atM(), jet, line.nozzleM());
        List<Item> items = new ArrayList<>(List.of(Body.of(body(cone), Paint.flat(Palette.GLASS, 0.8))));
        if (withCone && jet.momentumFluxM4PerS2() > 0) {
            items.addAll(cone(cone, jet, insideM));
        }
        return items;
    }

    private static JetCone round(Vec3 atM, JetSource jet, double diameterM) {
        return new JetCone(atM, jet.aim(), jet.across(), diameterM / 2, diameterM / 2);
    }

    private static Surface body(JetCone outlet) {
        double width = WALL * outlet.halfWidthM();
        double height = WALL * outlet.halfHeightM();
        double length = 2 * BODY_LENGTHS * Math.min(width, height);
        if (width > 1.01 * height) {
            return block(outlet, width, height, length);
        }
        double mouth = outlet.halfWidthM();
        return Turned.turn(outlet.atM().minus(outlet.aim().times(length)), outlet.aim(),
                List.of(new Ring(0, 0), new Ring(0, 0.75 * width), new Ring(0, 0.75 * width),
                        new Ring(0.25 * length, width), new Ring(length, width), new Ring(length, width),
                        new Ring(length, mouth), new Ring(length, mouth), new Ring(0.8 * length, 0)), 0.01);
    }

    private static Surface block(JetCone outlet, double width, double height, double length) {
        Vec3 a = outlet.across().times(2 * width);
        Vec3 b = outlet.aim().cross(outlet.across()).times(2 * height);
        Vec3 c = outlet.aim().times(length);
        Vec3 low = outlet.atM().minus(c).minus(a.times(0.5)).minus(b.times(0.5));
        Vec3 high = low.plus(a).plus(b).plus(c);
        return Surface.joined(List.of(Solids.rectangle(low, b, a, 1), Solids.rectangle(low, a, c, 1),
                Solids.rectangle(low, c, b, 1), Solids.rectangle(high, a.times(-1), b.times(-1), 1),
                Solids.rectangle(high, c.times(-1), a.times(-1), 1),
                Solids.rectangle(high, b.times(-1), c.times(-1), 1)));
    }

    private static List<Item> cone(JetCone cone, JetSource jet, Vec3 insideM) {
        double free = DECAY * Math.sqrt(jet.momentumFluxM4PerS2()) / CONE_ENDS_M_PER_S;
        double wall = JetCone.reachM(cone.atM(), cone.aim(), insideM);
        double length = Math.max(LEAST_CONE_M, Math.min(free, wall));
        List<List<Vec3>> lines = new ArrayList<>();
        lines.add(List.of(cone.atM(), cone.atM().plus(cone.aim().times(length))));
        if (free < wall - cone.halfWidthAtM(length)) {
            lines.add(cone.rim(length));
        }
        Paint line = Paint.flat(Palette.JET.withOpacity(0.8), 0);
        return List.of(Body.of(cone.surface(length), Paint.flat(Palette.JET.withOpacity(CONE_OPACITY), 0)),
                Strokes.of(Polylines.of(lines), line, 1.2));
    }
}
