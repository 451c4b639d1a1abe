package slackwater.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.edit.Drag;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.scene.Paint;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.shape.Polylines;

/** Marks of what is chosen and of the measuring point; the same objects as long as they stand where they stood. */
final class Handles {
    private static final double DOT_BEFORE_M = 0.008;

    private List<Object> from = List.of();
    private List<Item> items = List.of();

    /**
     * The marks on the picture of a tank.
     *
     * @param chosen what is chosen there; empty on the picture of the other tank
     */
    List<Item> of(Session session, Scenario scenario, Optional<Thing> chosen) {
        // Before the line that runs through it.
        Vec3 nearer = session.camera().towardsEye().times(DOT_BEFORE_M);
        Optional<Vec3> point = session.pointM().map(at -> at.plus(nearer));
        List<Object> now = List.of(chosen, chosen.isPresent() ? scenario : List.of(), point);
        if (!now.equals(from)) {
            List<Item> fresh = new ArrayList<>();
            chosen.ifPresent(thing -> fresh.addAll(handles(scenario, thing)));
            point.ifPresent(at -> fresh.add(dot(at, Palette.INK, 9)));
            from = now;
            items = List.copyOf(fresh);
        }
        return items;
    }

    /** A dot on what is chosen, and the handle of its aim. */
    private static List<Item> handles(Scenario scenario, Thing thing) {
        Vec3 at = thing.atM(scenario);
        List<Item> items = new ArrayList<>();
        if (thing.aims()) {
            Vec3 handle = Drag.handleM(scenario, thing);
            items.add(Strokes.of(Polylines.of(List.of(List.of(at, handle))), Paint.flat(Palette.FAST, 0), 2.5));
            items.add(dot(handle, Palette.FAST, 14));
        }
        items.add(dot(thing.kind() == Thing.Kind.ROCK ? top(scenario.rocks().get(thing.index()).solid().bounds()) : at,
                Palette.FAST, 10));
        return items;
    }

    private static Vec3 top(Bounds bounds) {
        return bounds.centre().plus(new Vec3(0, 0, bounds.size().z() / 2));
    }

    private static Item dot(Vec3 atM, Colour colour, double units) {
        return new Strokes(Polylines.of(List.of(List.of(atM))), Item.NONE, Paint.flat(colour, 0), units, true);
    }
}
