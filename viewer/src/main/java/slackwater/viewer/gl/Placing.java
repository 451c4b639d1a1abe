package slackwater.viewer.gl;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import slackwater.geometry.Vec3;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Lens;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.camera.Ray;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.scene.Label;
import slackwater.viewer.scene.LabelPlan;
import slackwater.viewer.scene.LabelPlan.Area;
import slackwater.viewer.scene.LabelPlan.Pin;
import slackwater.viewer.shape.Sight;

/**
 * Where the labels of a picture stand, and which of their things are hidden. Finding that takes longer than drawing it,
 * so it is kept for as long as what it was found from is the same.
 *
 * @param cards the labels that are to be seen
 * @param from labels, margins, camera and frame
 * @param solids what may hide something
 */
record Placing(List<Card> cards, List<Object> from, List<Body> solids) {
    /** Before anything was drawn. */
    static final Placing NONE = new Placing(List.of(), List.of(), List.of());
    /** How far before a thing a look may end and still be on it. */
    private static final double CLEAR_M = 0.01;
    /** A thing's own rim does not hide it: so many times the room that its words leave it. */
    private static final double OWN = 1.6;
    /** Finer surfaces, such as slices of a fine field, are not asked whether they hide something: it takes too long. */
    private static final int MOST_TRIANGLES = 20_000;
    private static final double MOST_CLEAR = 60;

    /** A label, its point, its place, and whether something stands before its point. */
    record Card(Label label, Pin pin, Area area, boolean hidden) {
    }

    /** @param size width and height of a label, units of type */
    static Placing of(Drawing drawing, Camera camera, Frame frame, Margins margins, Function<Label, double[]> size) {
        List<Body> solids = solids(drawing);
        List<Label> shown = new ArrayList<>();
        List<Pin> pins = new ArrayList<>();
        for (Label label : drawing.labels()) {
            Camera.Spot spot = camera.spot(label.atM(), frame);
            double x = spot.xPx() / frame.scale();
            double y = spot.yPx() / frame.scale();
            boolean visible = (spot.depthM() > 0 || camera.lens() == Lens.PARALLEL) && x >= 0 && y >= 0
                    && x <= frame.widthUnits() && y <= frame.heightUnits();
            if (visible) {
                double[] wideAndHigh = size.apply(label);
                shown.add(label);
                pins.add(new Pin(x, y, clear(label, spot, camera, frame), wideAndHigh[0], wideAndHigh[1]));
            }
        }
        Area page = new Area(6, margins.top() - 14, frame.widthUnits() - 12,
                frame.heightUnits() - margins.top() - margins.bottom() + 22);
        List<Area> areas = LabelPlan.place(pins, page, List.of());
        List<Card> cards = new ArrayList<>();
        for (int n = 0; n < shown.size(); n++) {
            cards.add(new Card(shown.get(n), pins.get(n), areas.get(n),
                    isHidden(shown.get(n), solids, camera, frame)));
        }
        return new Placing(cards, List.of(drawing.labels(), margins, camera, frame), solids);
    }

    /** Whether it would be found the same again. */
    boolean holds(Drawing drawing, Camera camera, Frame frame, Margins margins) {
        List<Body> now = solids(drawing);
        boolean same = now.size() == solids.size();
        for (int n = 0; same && n < now.size(); n++) {
            same = now.get(n) == solids.get(n);
        }
        return same && from.equals(List.of(drawing.labels(), margins, camera, frame));
    }

    private static List<Body> solids(Drawing drawing) {
        List<Body> solids = new ArrayList<>();
        for (Item item : drawing.items()) {
            if (item instanceof Body body && item.paint().colour().isOpaque() && !item.paint().insideOnly()
                    && body.surface().triangleCount() < MOST_TRIANGLES) {
                solids.add(body);
            }
        }
        return solids;
    }

    /** What the thing takes about its point, units; less for one that the eye is almost upon. */
    private static double clear(Label label, Camera.Spot spot, Camera camera, Frame frame) {
        double shrunk = camera.lens() == Lens.PERSPECTIVE ? camera.distanceM() / Math.max(spot.depthM(), 0.05) : 1;
        return Math.min(MOST_CLEAR, label.radiusM() / camera.heightM() * frame.heightUnits() * shrunk);
    }

    /** Whether something solid stands between the eye and the thing that a label is about. */
    private static boolean isHidden(Label label, List<Body> solids, Camera camera, Frame frame) {
        Camera.Spot spot = camera.spot(label.atM(), frame);
        Ray sight = camera.ray(spot.xPx(), spot.yPx(), frame);
        Vec3 before = label.atM().minus(sight.direction().times(OWN * label.radiusM() + CLEAR_M));
        return solids.stream().anyMatch(body -> Sight.isBlocked(body.surface(), sight.fromM(), before));
    }
}
