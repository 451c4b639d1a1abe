package slackwater.viewer.session;

import slackwater.geometry.Vec3;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Units;
import slackwater.viewer.shape.Axis;

/** Switches what is shown of all tanks of a session. */
final class Layering {
    private final Session session;
    private final Strewing strewing;

    Layering(Session session) {
        this.session = session;
        this.strewing = new Strewing(session);
    }

    /** Does what an action asks of the layers; tells whether it was one of those. */
    boolean perform(Action action) {
        Vec3 inside = session.side().scenario().tank().insideM();
        switch (action) {
            case STILL_WATER -> session.showing().toggle(Layer.STILL_WATER);
            case TRACERS -> session.showing().toggle(Layer.TRACERS);
            case STREAMLINES -> session.showing().toggle(Layer.STREAMLINES);
            case FAST_WATER -> session.showing().toggle(Layer.FAST_WATER);
            case FAST_LESS -> fast(-1);
            case FAST_MORE -> fast(1);
            case SHEAR -> session.showing().toggle(Layer.SHEAR);
            case DEPOSIT -> deposit();
            case GRAINS -> strewing.toggle();
            case GRAIN_PINCH -> strewing.pinch();
            case GRAIN_KIND -> strewing.nextKind();
            case JETS -> session.showing().toggle(Layer.JETS);
            case NAMES -> session.showing().toggle(Layer.NAMES);
            case SLICE_X -> session.showing().toggle(Axis.X, inside);
            case SLICE_Y -> session.showing().toggle(Axis.Y, inside);
            case SLICE_Z -> session.showing().toggle(Axis.Z, inside);
            case SLICE_DOWN -> slide(-1, inside);
            case SLICE_UP -> slide(1, inside);
            case DIFFERENCE -> difference();
            default -> {
                return false;
            }
        }
        return true;
    }

    private void difference() {
        if (session.sides().size() == 2) {
            session.showing().toggleDifference();
        } else {
            session.say("A difference needs two tanks: slackwater view A B.");
        }
    }

    private void slide(int way, Vec3 insideM) {
        if (session.showing().cuts().isEmpty()) {
            session.say("No slice is shown that could be slid; X, Y and Z put one into the water.");
        }
        session.showing().slide(way, insideM);
    }

    /** Shows fast water, from a speed a step lower or higher. */
    private void fast(int way) {
        if (!session.showing().shows(Layer.FAST_WATER)) {
            session.showing().toggle(Layer.FAST_WATER);
        }
        double step = session.showing().units().speedMPerS(session.showing().units() == Units.METRIC ? 1 : 0.5);
        double now = session.side().water().map(session.showing()::fastMPerS)
                .orElse(session.showing().askedFastMPerS());
        session.showing().fastFrom(Math.max(step, (Math.rint(now / step) + way) * step));
    }

    private void deposit() {
        if (session.sides().stream().flatMap(one -> one.water().stream())
                .anyMatch(water -> !water.deposits().isEmpty())) {
            session.showing().toggle(Layer.DEPOSIT);
        } else {
            session.say("No waste was followed in this water; a finished run can have that.");
        }
    }
}
