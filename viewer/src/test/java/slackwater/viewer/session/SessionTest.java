package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.geometry.Box;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Pattern;
import slackwater.scenario.Scenario;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Units;
import slackwater.viewer.shape.Axis;

/** Everything by key, without a window. */
class SessionTest extends AtTheTerrace {
    @Test
    void noKeyMeansTwoThings() {
        Map<Stroke, Action> keys = new HashMap<>();
        for (Action action : Action.values()) {
            assertFalse(action.strokes().isEmpty(), action + " has no key");
            action.strokes().forEach(stroke -> assertEquals(Optional.empty(),
                    Optional.ofNullable(keys.put(stroke, action)), stroke.words()));
        }
    }

    @Test
    void everyActionDoesSomethingByItsKey() {
        for (Action action : Action.values()) {
            prepare(action);
            String before = fingerprint();
            assertTrue(session.key(action.strokes().get(0), false), action.toString());
            assertFalse(before.equals(fingerprint()), action + " did nothing");
            session.answer(false);
        }
    }

    /** What an action needs to have something to do. */
    private void prepare(Action action) {
        session.takesScreenshot();
        session.select(action.group().equals("Change") || action == Action.LET_GO
                ? Optional.of(new Thing(Kind.PUMP, 0)) : Optional.empty());
        session.point(Optional.empty());
        switch (action) {
            case UNDO, SAVE -> change();
            case REDO -> {
                change();
                session.perform(Action.UNDO);
            }
            case PERIOD_LONGER, PERIOD_SHORTER -> new Changes(session).givePattern(
                    new Pattern(Pattern.Kind.PULSE, 10, 0.3, 0));
            case LARGER, SMALLER -> session.select(Optional.of(new Thing(Kind.CORAL, 0)));
            case FIT -> session.perform(Action.NEARER);
            case SLICE_DOWN, SLICE_UP -> session.showing().toggle(Axis.Y, now().tank().insideM());
            default -> { }
        }
    }

    private void change() {
        session.select(Optional.of(new Thing(Kind.PUMP, 0)));
        session.perform(Action.MOVE_RIGHT);
    }

    /** All that can be seen of a session, or is wished for: what an action must change something of. */
    private String fingerprint() {
        Showing showing = session.showing();
        return String.join("\n", session.side().scenario().toString(), session.camera().toString(),
                session.selected().toString(), session.pointM().toString(), showing.layers().toString(),
                showing.cuts().toString(), "" + showing.askedFastMPerS(), showing.units().toString(), session.message(),
                session.question().map(Question::words).orElse(""), "" + session.help() + session.closed()
                + session.active() + showing.difference() + session.side().flow().orElseThrow().paused()
                + session.takesScreenshot());
    }

    @Test
    void tabGoesThroughEverythingAndBack() {
        press(Stroke.TAB);
        assertEquals(Optional.of(new Thing(Kind.PUMP, 0)), session.selected());
        for (int n = 0; n < 12; n++) {
            press(Stroke.TAB);
        }
        assertEquals(Optional.of(new Thing(Kind.PUMP, 0)), session.selected(), "twelve things in a ring");
        session.key(Stroke.shift(Stroke.TAB), false);
        assertEquals(Optional.of(new Thing(Kind.ROCK, 2)), session.selected());
        press(Stroke.ESCAPE);
        assertEquals(Optional.empty(), session.selected());
    }

    @Test
    void aPumpIsMovedTurnedAndSetByKeys() {
        press(Stroke.TAB, Stroke.RIGHT, Stroke.UP, Stroke.PAGE_UP);
        assertEquals(0, pump().atM().minus(new Vec3(0.05, 0.19, 0.37)).length(), 1e-12);
        press('A', 'W');
        assertEquals(15, Math.toDegrees(pump().yawRad()), 1e-9);
        assertEquals(-3, Math.toDegrees(pump().pitchRad()), 1e-9);
        press('[', '[', ']');
        assertEquals(0.75, pump().outputFraction(), 1e-12);
        press('O');
        assertEquals(0, pump().outputFraction());
        press('O', 'P');
        assertEquals(0.75, pump().outputFraction(), 1e-12, "on again as it was");
        assertEquals(Pattern.Kind.PULSE, pump().pattern().kind());
        press('.', '.', ',');
        assertEquals(11, pump().pattern().periodS());
    }

    /** Keys held down are one change; another kind of change is another. */
    @Test
    void quickChangesOfOneKindAreUndoneTogether() {
        Scenario start = now();
        press(Stroke.TAB, Stroke.RIGHT, Stroke.RIGHT, Stroke.RIGHT, 'A');
        press('W');
        session.key(Stroke.command('Z'), false);
        assertEquals(0.07, pump().atM().x(), 1e-12, "three steps to the right are left");
        session.key(Stroke.command('Z'), false);
        assertEquals(start, now());
        assertFalse(session.side().changed());
        session.key(Stroke.command('Y'), false);
        session.key(Stroke.command('Y'), false);
        assertEquals(15, Math.toDegrees(pump().yawRad()), 1e-9);
    }

    @Test
    void coralsAndRocksComeAndGo() {
        press('C');
        assertEquals(7, now().corals().size());
        assertEquals(Optional.of(new Thing(Kind.CORAL, 6)), session.selected());
        assertEquals(0.04, now().corals().get(6).atM().z(), 1e-6, "it stands on the sand");
        press('G', Stroke.DELETE);
        assertEquals(6, now().corals().size());
        session.point(Optional.of(new Vec3(0.6, 0.27, 0.4)));
        press('C');
        assertEquals(0.2, now().corals().get(6).atM().z(), 1e-6, "it stands on the terrace below the point");
        press('P');
        assertEquals(CoralGroup.SMALL_POLYP, now().corals().get(6).group());
        press(Stroke.DELETE, 'R');
        assertEquals(4, now().rocks().size());
        press('P');
        assertTrue(now().rocks().get(3).solid() instanceof Box);
        press('P', 'P');
        assertTrue(now().rocks().get(3).solid() instanceof Ellipsoid);
        press(Stroke.DELETE);
        assertEquals(3, now().rocks().size());
        session.select(Optional.of(new Thing(Kind.RETURN, 0)));
        press(Stroke.DELETE);
        assertTrue(session.message().startsWith("The return stays"), session.message());
    }

    @Test
    void layersSlicesUnitsAndViews() {
        press('L');
        assertTrue(session.showing().shows(Layer.STREAMLINES));
        press('L', 'X', 'Z');
        assertFalse(session.showing().shows(Layer.STREAMLINES));
        assertEquals(0.6, session.showing().cut(Axis.X).orElseThrow(), 1e-12);
        press('\'', '\'', ';');
        assertEquals(0.26 + 0.013, session.showing().cut(Axis.Z).orElseThrow(), 1e-12);
        assertTrue(session.showing().shows(Layer.SPEED));
        press('X', 'Z');
        assertFalse(session.showing().shows(Layer.SPEED));
        press('U');
        assertEquals(Units.US, session.showing().units());
        Camera corner = session.camera();
        press('1');
        assertEquals(0, session.camera().pitchRad());
        press('3');
        assertEquals(Math.PI / 2, session.camera().pitchRad(), 1e-12);
        press('4');
        assertEquals(corner.yawRad(), session.camera().yawRad());
        assertEquals(0, corner.eyeM().minus(session.camera().eyeM()).length(), 1e-3);
        session.key(Stroke.shift(Stroke.LEFT), true);
        assertNotEquals(corner, session.camera());
        press(Stroke.HOME);
    }

    /** With nothing chosen, arrows move the measuring point; without one, they go round the tank. */
    @Test
    void arrowsMoveWhatThereIsToMove() {
        Camera before = session.camera();
        press(Stroke.LEFT);
        assertNotEquals(before, session.camera());
        press('M');
        Vec3 point = session.pointM().orElseThrow();
        press(Stroke.LEFT, Stroke.UP);
        assertEquals(0, session.pointM().orElseThrow().minus(point).minus(new Vec3(-0.01, 0, 0.01)).length(), 1e-9);
    }
}
