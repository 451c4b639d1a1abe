package slackwater.viewer.session;

import java.util.List;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.camera.View;

/** From where all tanks of a session are seen. */
final class Viewpoint {
    private static final double ORBIT_RAD = Math.toRadians(5);
    private static final double PAN_PX = 40;
    private static final double ZOOM = 1.12;
    private static final Margins LEAST_ROOM = new Margins(36, 36, 104, 90);

    private final List<Side> sides;
    private Frame frame = new Frame(800, 600, 1);
    private Camera camera;
    private boolean fitted = true;
    private Margins needed = LEAST_ROOM;
    private Margins room = LEAST_ROOM;

    Viewpoint(List<Side> sides) {
        this.sides = sides;
        this.camera = View.CORNER.on(boxM(), frame, room);
    }

    Camera camera() {
        return camera;
    }

    Frame frame() {
        return frame;
    }

    void look(Camera other) {
        camera = other;
        fitted = false;
    }

    /** A tank that filled the picture goes on filling it. */
    void resize(Frame other) {
        boolean same = other.equals(frame);
        frame = other;
        if (fitted && !same) {
            room = needed;
            fit();
        }
    }

    /**
     * Leaves room for words about the tanks. It grows at once, and shrinks when a view is asked for: a tank should not
     * move to and fro with every line.
     */
    void leave(Margins words) {
        needed = LEAST_ROOM.with(words);
        Margins grown = room.with(needed);
        if (!grown.equals(room)) {
            room = grown;
            if (fitted) {
                fit();
            }
        }
    }

    private void fit() {
        camera = camera.fitted(boxM(), frame, room);
        fitted = true;
    }

    private void look(View side) {
        camera = side.on(boxM(), frame, room);
        fitted = true;
    }

    /** A box about all the tanks. */
    private Bounds boxM() {
        return sides.stream().map(side -> new Bounds(Vec3.ZERO, side.scenario().tank().insideM()))
                .reduce(Bounds::around).orElseThrow();
    }

    /** Does what an action asks of the view; tells whether it was one of those. */
    boolean perform(Action action) {
        double pan = PAN_PX * frame.scale();
        room = action.name().startsWith("VIEW_") || action == Action.FIT ? needed : room;
        switch (action) {
            case VIEW_FRONT -> look(View.FRONT);
            case VIEW_SIDE -> look(View.SIDE);
            case VIEW_TOP -> look(View.TOP);
            case VIEW_CORNER -> look(View.CORNER);
            case FIT -> fit();
            case ORBIT_LEFT -> look(camera.orbited(-ORBIT_RAD, 0));
            case ORBIT_RIGHT -> look(camera.orbited(ORBIT_RAD, 0));
            case ORBIT_UP -> look(camera.orbited(0, ORBIT_RAD));
            case ORBIT_DOWN -> look(camera.orbited(0, -ORBIT_RAD));
            case PAN_LEFT -> look(camera.panned(-pan, 0, frame));
            case PAN_RIGHT -> look(camera.panned(pan, 0, frame));
            case PAN_UP -> look(camera.panned(0, -pan, frame));
            case PAN_DOWN -> look(camera.panned(0, pan, frame));
            case NEARER -> look(camera.zoomed(1 / ZOOM));
            case FARTHER -> look(camera.zoomed(ZOOM));
            default -> {
                return false;
            }
        }
        return true;
    }
}
