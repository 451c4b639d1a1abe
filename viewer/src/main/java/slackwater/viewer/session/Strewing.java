package slackwater.viewer.session;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slackwater.detritus.Grain;
import slackwater.detritus.Grains;
import slackwater.field.Grid;
import slackwater.field.Velocity;
import slackwater.geometry.Vec3;
import slackwater.viewer.live.LiveFlow;
import slackwater.viewer.scene.Crumbs;
import slackwater.viewer.scene.Layer;

/** Lets grains go in all tanks of a session alike, and takes them away. */
final class Strewing {
    private final Session session;

    Strewing(Session session) {
        this.session = session;
    }

    private Stream<LiveFlow> flows() {
        return session.sides().stream().flatMap(side -> side.flow().stream());
    }

    /** Kinds that can be shown: those that can be let go, or else those that a run let go. */
    private List<String> kinds() {
        return flows().findAny().isPresent()
                ? Grains.of(session.side().scenario()).stream().map(Grain::name).toList()
                : session.sides().stream().flatMap(side -> side.water().stream())
                .flatMap(water -> water.crumbs().stream()).map(Crumbs::what).distinct().toList();
    }

    private Optional<Grain> kind(Side side) {
        return Grains.named(session.showing().kind(), side.scenario());
    }

    /** Lets grains rain, or takes them away. */
    void toggle() {
        List<String> kinds = kinds();
        if (kinds.isEmpty()) {
            session.say("No grains were followed in this water; a run does that unless it is told not to.");
            return;
        }
        session.showing().toggle(Layer.GRAINS);
        if (session.showing().shows(Layer.GRAINS)) {
            if (!kinds.contains(session.showing().kind())) {
                session.showing().letGo(kinds.get(0));
            }
            rain();
        } else {
            flows().forEach(LiveFlow::clear);
        }
    }

    /** A clock that stands is no fault, but grains that do not fall would look like one. */
    private void tellOfPause() {
        if (flows().anyMatch(LiveFlow::paused)) {
            session.say("The water is paused: grains fall once it goes on (Space).");
        }
    }

    private void rain() {
        tellOfPause();
        for (Side side : session.sides()) {
            kind(side).ifPresent(kind -> side.flow().ifPresent(flow -> flow.rain(kind)));
        }
    }

    /** Another kind: in water under way it is let go at once. */
    void nextKind() {
        List<String> kinds = kinds();
        if (!kinds.isEmpty()) {
            session.showing().letGo(kinds.get((kinds.indexOf(session.showing().kind()) + 1) % kinds.size()));
            session.say("Grains are " + session.showing().kind() + " now.");
            if (session.showing().shows(Layer.GRAINS)) {
                rain();
            }
        }
    }

    /** Drops a pinch at the measuring point, beside what has been let go, in each tank that has water there. */
    void pinch() {
        Optional<Vec3> point = session.pointM();
        if (flows().findAny().isEmpty()) {
            session.say("A finished result stays as it is; open its scenario to drop something in its water.");
        } else if (point.isEmpty()) {
            session.say("Click into the water first, or press M: a pinch is dropped at the measuring point.");
        } else {
            List<Side> wet = session.sides().stream().filter(side -> isWater(side, point.get())).toList();
            wet.forEach(side -> kind(side).ifPresent(kind -> side.flow().orElseThrow().pinch(kind, point.get())));
            if (wet.isEmpty()) {
                session.say("There is no water at the measuring point.");
                return;
            }
            tellOfPause();
            if (!session.showing().shows(Layer.GRAINS)) {
                session.showing().toggle(Layer.GRAINS);
            }
        }
    }

    private static boolean isWater(Side side, Vec3 atM) {
        Optional<Velocity> water = side.snapshot().map(now -> now.velocity());
        if (water.isEmpty()) {
            return false;
        }
        Grid grid = water.get().grid();
        double h = grid.cellSizeM();
        boolean inside = atM.x() >= 0 && atM.y() >= 0 && atM.z() >= 0 && atM.x() < grid.nx() * h
                && atM.y() < grid.ny() * h && atM.z() < grid.nz() * h;
        return inside && water.get().fluid()[grid.indexAt(atM)];
    }
}
