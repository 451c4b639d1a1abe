package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Box;
import slackwater.geometry.Mesh;
import slackwater.geometry.Solid;
import slackwater.geometry.Union;
import slackwater.geometry.Vec3;
import slackwater.scenario.Overflow;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.shape.Polylines;
import slackwater.viewer.shape.Solids;
import slackwater.viewer.shape.Surface;

/** Glass, water line, sand, rock and weir. */
public final class TankParts {
    /** As fine as a map on it needs. */
    private static final double EDGE_M = 0.02;
    /** As fine as a round outline needs. */
    private static final double PLAIN_EDGE_M = 0.03;
    /** No finer than it comes. */
    private static final double WHOLE_M = 100;
    private static final double LIFT_M = 0.0005;
    private static final double EDGE_UNITS = 1.6;
    private static final double WATER_LINE_UNITS = 1.2;
    private static final double TOOTH_M = 0.01;
    private static final double WEIR_DEPTH_M = 0.025;

    private TankParts() {
    }

    /** All of them. */
    public static List<Item> of(Scenario scenario) {
        List<Item> items = new ArrayList<>(glass(scenario.tank()));
        if (scenario.tank().sandDepthM() > 0) {
            items.add(Body.of(sand(scenario.tank()), Paint.flat(Palette.SAND, 0.5)));
        }
        scenario.rocks().forEach(rock -> items.add(Body.of(plain(rock.solid()), Paint.flat(Palette.ROCK, 0.75))));
        scenario.overflow().ifPresent(weir -> items.addAll(weir(weir, scenario.tank())));
        return items;
    }

    /** A rock's surface, fine enough to carry a map. */
    public static Surface surface(Rock rock) {
        return Solids.of(rock.solid(), EDGE_M);
    }

    /** A rock's surface without a map: a tank is drawn over and over, so it has no more triangles than it needs. */
    private static Surface plain(Solid solid) {
        if (solid instanceof Union union) {
            return Surface.joined(union.parts().stream().map(TankParts::plain).toList());
        }
        return Solids.of(solid, solid instanceof Box || solid instanceof Mesh ? WHOLE_M : PLAIN_EDGE_M);
    }

    /** The top of the sand, lifted by half a millimetre so that it covers the sand itself. */
    public static Surface sandTop(Tank tank) {
        Vec3 inside = tank.insideM();
        return Solids.rectangle(new Vec3(0, 0, tank.sandDepthM() + LIFT_M), new Vec3(inside.x(), 0, 0),
                new Vec3(0, inside.y(), 0), EDGE_M);
    }

    /** The sand as a slab over the whole bottom. */
    public static Surface sand(Tank tank) {
        Vec3 inside = tank.insideM();
        return Solids.box(Vec3.ZERO, new Vec3(inside.x(), inside.y(), tank.sandDepthM()), WHOLE_M);
    }

    private static List<Item> glass(Tank tank) {
        Vec3 inside = tank.insideM();
        Surface panes = Solids.box(Vec3.ZERO, inside, 1);
        return List.of(
                Body.of(panes, Paint.flat(Palette.PANE, 0.12).fromInside()),
                Strokes.of(edges(inside), Paint.flat(Palette.GLASS, 0), EDGE_UNITS),
                Strokes.of(ring(inside, tank.waterLevelM()), Paint.flat(Palette.WATER_LINE, 0), WATER_LINE_UNITS));
    }

    private static Polylines edges(Vec3 inside) {
        List<List<Vec3>> lines = new ArrayList<>();
        for (int n = 0; n < 4; n++) {
            double x = n == 1 || n == 2 ? inside.x() : 0;
            double y = n >= 2 ? inside.y() : 0;
            lines.add(List.of(new Vec3(x, y, 0), new Vec3(x, y, inside.z())));
        }
        lines.add(loop(inside, 0));
        lines.add(loop(inside, inside.z()));
        return Polylines.of(lines);
    }

    private static Polylines ring(Vec3 inside, double heightM) {
        return Polylines.of(List.of(loop(inside, heightM)));
    }

    private static List<Vec3> loop(Vec3 inside, double z) {
        return List.of(new Vec3(0, 0, z), new Vec3(inside.x(), 0, z), new Vec3(inside.x(), inside.y(), z),
                new Vec3(0, inside.y(), z), new Vec3(0, 0, z));
    }

    /** A comb along the stretch of pane over which water leaves. */
    private static List<Item> weir(Overflow weir, Tank tank) {
        double level = tank.waterLevelM();
        List<List<Vec3>> teeth = new ArrayList<>();
        teeth.add(List.of(at(weir, tank, weir.fromM(), level - WEIR_DEPTH_M),
                at(weir, tank, weir.toM(), level - WEIR_DEPTH_M)));
        int count = (int) Math.max(1, Math.round((weir.toM() - weir.fromM()) / TOOTH_M));
        for (int n = 0; n <= count; n++) {
            double along = weir.fromM() + (weir.toM() - weir.fromM()) * n / count;
            teeth.add(List.of(at(weir, tank, along, level - WEIR_DEPTH_M), at(weir, tank, along, level + TOOTH_M)));
        }
        return List.of(Strokes.of(Polylines.of(teeth), Paint.flat(Palette.PUMP, 0), 2));
    }

    private static Vec3 at(Overflow weir, Tank tank, double along, double z) {
        Vec3 inside = tank.insideM();
        double gap = 0.002;
        return switch (weir.wall()) {
            case FRONT -> new Vec3(along, gap, z);
            case BACK -> new Vec3(along, inside.y() - gap, z);
            case LEFT -> new Vec3(gap, along, z);
            case RIGHT -> new Vec3(inside.x() - gap, along, z);
        };
    }

    /** The middle of the weir, metres. */
    static Vec3 middle(Overflow weir, Tank tank) {
        return at(weir, tank, (weir.fromM() + weir.toM()) / 2, tank.waterLevelM());
    }
}
