package slackwater.viewer.session;

import java.util.Optional;
import java.util.stream.Stream;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Ray;
import slackwater.viewer.edit.Drag;
import slackwater.viewer.edit.Drag.Grip;
import slackwater.viewer.edit.Drag.Way;
import slackwater.viewer.edit.Pick;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;

/**
 * What the pointer does in the picture of a tank: it goes round the tank, slides it, chooses, drags and measures.
 * Places are pixels from the top left of that picture.
 */
public final class Pointer {
    /** A pointer that moves less than this while its button is down has clicked. */
    private static final double STILL_UNITS = 4;
    private static final double HANDLE_UNITS = 11;
    private static final double RAD_A_UNIT = 0.008;
    private static final double ZOOM_A_NOTCH = 1.1;

    /** What is held down. */
    public enum Button { MAIN, OTHER }

    private final Session session;
    private Optional<Drag> drag = Optional.empty();
    private Optional<Button> held = Optional.empty();
    private double startX;
    private double startY;
    private double lastX;
    private double lastY;
    private boolean moved;

    public Pointer(Session session) {
        this.session = session;
    }

    /** A button goes down over the picture of a tank. */
    public void press(int side, Button button, double xPx, double yPx, Way way) {
        session.activate(side);
        session.say("");
        held = Optional.of(button);
        moved = false;
        startX = xPx;
        startY = yPx;
        lastX = xPx;
        lastY = yPx;
        drag = Optional.empty();
        if (button == Button.MAIN) {
            take(xPx, yPx, way);
        }
    }

    /** Takes what is under the pointer: the handle of the chosen thing, a pump, or the chosen thing itself. */
    private void take(double xPx, double yPx, Way way) {
        Scenario scenario = session.side().scenario();
        Ray ray = ray(xPx, yPx);
        Optional<Thing> aiming = session.selected().filter(Thing::aims).filter(thing -> onHandle(thing, xPx, yPx));
        if (aiming.isPresent() && session.side().editable()) {
            drag = Optional.of(Drag.of(scenario, aiming.get(), Grip.AIM, ray, way));
            return;
        }
        Optional<Thing> hit = Pick.thing(scenario, ray).map(Pick.Hit::thing);
        boolean ready = hit.isPresent() && (hit.get().kind() == Kind.PUMP || hit.equals(session.selected()));
        if (ready && session.side().editable()) {
            session.select(hit);
            drag = Optional.of(Drag.of(scenario, hit.get(), Grip.BODY, ray, way));
        }
    }

    private boolean onHandle(Thing thing, double xPx, double yPx) {
        Camera.Spot spot = session.camera().spot(Drag.handleM(session.side().scenario(), thing), session.frame());
        return Math.hypot(spot.xPx() - xPx, spot.yPx() - yPx) < HANDLE_UNITS * session.frame().scale();
    }

    /** The pointer moves, with or without a button. */
    public void move(double xPx, double yPx) {
        if (held.isEmpty()) {
            return;
        }
        double scale = session.frame().scale();
        moved |= Math.hypot(xPx - startX, yPx - startY) > STILL_UNITS * scale;
        if (drag.isPresent()) {
            if (moved) {
                session.side().layout().preview(drag.get().at(ray(xPx, yPx), session.steps()));
            }
        } else if (moved && held.get() == Button.MAIN) {
            session.look(session.camera().orbited(-(xPx - lastX) / scale * RAD_A_UNIT,
                    (yPx - lastY) / scale * RAD_A_UNIT));
        } else if (moved) {
            session.look(session.camera().panned(xPx - lastX, yPx - lastY, session.frame()));
        }
        lastX = xPx;
        lastY = yPx;
    }

    /** The button comes up: what was dragged stays where it is; a click chooses or measures. */
    public void release(double xPx, double yPx) {
        if (drag.isPresent() && moved) {
            session.side().layout().change("drag " + startX + " " + System.nanoTime(),
                    drag.get().at(ray(xPx, yPx), session.steps()));
        } else if (held.equals(Optional.of(Button.MAIN)) && !moved) {
            click(xPx, yPx);
        }
        session.side().layout().dropPreview();
        drag = Optional.empty();
        held = Optional.empty();
    }

    /** Lets go of what is dragged and leaves it where it was. */
    public void cancel() {
        session.side().layout().dropPreview();
        drag = Optional.empty();
        held = Optional.empty();
    }

    public boolean dragging() {
        return drag.isPresent() && moved;
    }

    /** Whether a button is down that went down over a picture. */
    public boolean holds() {
        return held.isPresent();
    }

    private void click(double xPx, double yPx) {
        Scenario scenario = session.side().scenario();
        Ray ray = ray(xPx, yPx);
        Optional<Pick.Hit> hit = Pick.thing(scenario, ray);
        boolean rock = hit.map(found -> found.thing().kind() == Kind.ROCK).orElse(false);
        Optional<Vec3> water = Pick.water(scenario, ray);
        if (hit.isPresent() && !rock) {
            session.select(hit.map(Pick.Hit::thing));
            return;
        }
        // A click on a rock chooses it and measures the water over it.
        session.select(hit.map(Pick.Hit::thing));
        session.point(onSlice(ray).or(() -> water));
    }

    /** The point of the nearest slice that the line of sight meets within the water. */
    private Optional<Vec3> onSlice(Ray ray) {
        Scenario scenario = session.side().scenario();
        Vec3 inside = scenario.tank().insideM();
        return session.showing().cuts().stream().flatMap(cut -> {
            double slope = cut.axis().of(ray.direction());
            double far = (cut.placeM() - cut.axis().of(ray.fromM())) / slope;
            Vec3 at = ray.at(far);
            boolean within = Math.abs(slope) > 1e-6 && far > 0 && at.x() >= 0 && at.y() >= 0
                    && at.z() >= scenario.tank().sandDepthM() && at.x() <= inside.x() && at.y() <= inside.y()
                    && at.z() <= scenario.tank().waterLevelM()
                    && scenario.rocks().stream().noneMatch(rock -> rock.solid().contains(at));
            return within ? Stream.of(far) : Stream.empty();
        }).min(Double::compare).map(ray::at);
    }

    /** The wheel turns, notches away from the person above 0. */
    public void scroll(double notches) {
        session.look(session.camera().zoomed(Math.pow(ZOOM_A_NOTCH, -notches)));
    }

    private Ray ray(double xPx, double yPx) {
        return session.camera().ray(xPx, yPx, session.frame());
    }
}
