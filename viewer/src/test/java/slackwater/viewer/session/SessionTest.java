package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.geometry.Box;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.edit.Drag;
import slackwater.viewer.edit.Tanks;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Units;
import slackwater.viewer.shape.Axis;

/** Everything by key, and the pointer by pixels, without a window. */
class SessionTest {
    @TempDir
    private Path folder;
    private Path file;
    private Session session;

    @BeforeEach
    void open() throws Exception {
        file = folder.resolve("terrace-120.toml");
        Files.copy(Tanks.FOLDER.resolve("terrace-120.toml"), file);
        session = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.04, 1)), Units.METRIC);
        session.resize(new Frame(1200, 800, 1));
    }

    @AfterEach
    void close() {
        session.close();
    }

    /** Tests must leave the examples alone: an open layout keeps its draft beside its file. */
    @AfterAll
    static void theExamplesAreAsTheyWere() throws Exception {
        try (Stream<Path> all = Files.walk(Tanks.FOLDER)) {
            assertEquals(List.of(), all.filter(one -> one.getFileName().toString().startsWith(".")
                    && !one.equals(Tanks.FOLDER)).toList());
        }
    }

    private void press(int... codes) {
        for (int code : codes) {
            assertTrue(session.key(Stroke.of(code), false), "key " + code + " means nothing");
        }
    }

    private Scenario now() {
        return session.side().scenario();
    }

    private Pump pump() {
        return now().pumps().get(0);
    }

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

    @Test
    void savingAsksFirstAndKeepsComments() throws Exception {
        String before = Files.readString(file);
        session.key(Stroke.command('S'), false);
        assertTrue(session.message().startsWith("Nothing to save"), session.message());
        press(Stroke.TAB, Stroke.RIGHT);
        session.key(Stroke.command('S'), false);
        assertTrue(session.question().orElseThrow().words().contains("terrace-120.toml?"));
        assertEquals(before, Files.readString(file));
        press(Stroke.ENTER);
        assertEquals(before.replace("at_cm = [4, 18, 36]", "at_cm = [5, 18, 36]"), Files.readString(file));
        assertFalse(session.side().changed());
    }

    @Test
    void somebodyElsesChangesAreNotOverwritten() throws Exception {
        press(Stroke.TAB, Stroke.RIGHT);
        String theirs = Files.readString(file).replace("output_percent = 80", "output_percent = 70");
        Files.writeString(file, theirs);
        session.key(Stroke.command('S'), false);
        assertTrue(session.question().orElseThrow().words().contains("beside it as terrace-120-2.toml"));
        session.answer(true);
        assertEquals(theirs, Files.readString(file));
        assertEquals(0.05, ScenarioFile.open(folder.resolve("terrace-120-2.toml")).scenario().pumps().get(0).atM().x(),
                1e-12);
    }

    /** Between question and answer as well: then it is asked anew. */
    @Test
    void changesMadeWhileTheQuestionStandsAreNotOverwritten() throws Exception {
        press(Stroke.TAB, Stroke.RIGHT);
        session.key(Stroke.command('S'), false);
        String theirs = Files.readString(file).replace("output_percent = 80", "output_percent = 70");
        Files.writeString(file, theirs);
        session.answer(true);
        assertEquals(theirs, Files.readString(file), "nothing is written yet");
        assertTrue(session.question().orElseThrow().words().contains("beside it as terrace-120-2.toml"));
        Files.writeString(folder.resolve("terrace-120-2.toml"), "theirs too");
        session.answer(true);
        assertEquals("theirs too", Files.readString(folder.resolve("terrace-120-2.toml")));
        assertTrue(session.question().orElseThrow().words().contains("beside it as terrace-120-3.toml"));
        session.answer(true);
        assertTrue(session.message().equals("Saved to terrace-120-3.toml."), session.message());
        assertEquals(theirs, Files.readString(file));
    }

    @Test
    void aFileThatOthersChangedIsToldOfWhereThereIsNothingToSave() throws Exception {
        Files.writeString(file, Files.readString(file).replace("output_percent = 80", "output_percent = 70"));
        session.key(Stroke.command('S'), false);
        assertEquals("Nothing to save: you changed nothing. terrace-120.toml was changed by another program; open it"
                + " again to see that.", session.message());
        assertFalse(Files.exists(folder.resolve("terrace-120-2.toml")));
    }

    /** One file twice at a window, to try two ways: each has its own draft, and its own memory of pumps. */
    @Test
    void twoTanksOfOneFileShareNothing() throws Exception {
        Scenario first;
        Scenario second;
        try (Session two = twice()) {
            two.select(Optional.of(new Thing(Kind.PUMP, 0)));
            two.perform(Action.MOVE_RIGHT);
            two.perform(Action.OFF);
            two.perform(Action.OTHER_SIDE);
            two.select(Optional.of(new Thing(Kind.PUMP, 0)));
            new Changes(two).giveOutput(0);
            two.perform(Action.OFF);
            assertEquals(1, two.side().scenario().pumps().get(0).outputFraction(), "never switched off on this side");
            first = two.sides().get(0).scenario();
            second = two.sides().get(1).scenario();
        }
        try (Session two = twice()) {
            two.answer(true);
            two.answer(true);
            assertEquals(Optional.empty(), two.question());
            assertEquals(first, two.sides().get(0).scenario());
            assertEquals(second, two.sides().get(1).scenario());
            two.askToClose();
            two.answer(true);
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(file), left.toList(), "nothing stays behind");
        }
    }

    private Session twice() throws Exception {
        return new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.04, 1),
                Side.live(ScenarioFile.open(file), () -> 0.04, 1)), Units.METRIC);
    }

    /** The window goes away: the next one offers the layout, and takes it up or forgets it. */
    @Test
    void anUnsavedLayoutOutlivesTheWindow() throws Exception {
        Path draft = folder.resolve(".terrace-120.toml.draft");
        press(Stroke.TAB, Stroke.RIGHT);
        Scenario changed = now();
        assertTrue(Files.exists(draft));
        for (boolean wanted : new boolean[] {true, false}) {
            try (Session next = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.04, 1)), Units.METRIC)) {
                assertTrue(next.question().orElseThrow().words().contains("was never saved"));
                next.answer(wanted);
                assertEquals(wanted, next.side().scenario().equals(changed));
                assertEquals(wanted, Files.exists(draft));
            }
        }
        press(Stroke.RIGHT);
        assertTrue(Files.exists(draft));
        session.askToClose();
        session.answer(true);
        assertTrue(session.closed());
        assertFalse(Files.exists(draft), "closing on purpose leaves nothing behind");
    }

    /** What cannot stand is shown and told, but neither computed nor saved. */
    @Test
    void whatCannotStandIsToldAndNotSaved() throws Exception {
        String before = Files.readString(file);
        press(Stroke.TAB);
        new Changes(session).place(new Vec3(0.35, 0.28, 0.1));
        assertTrue(session.side().trouble().orElseThrow().contains("pump \"left\" found [35, 28, 10] cm inside"),
                session.side().trouble().orElseThrow());
        session.key(Stroke.command('S'), false);
        assertEquals(Optional.empty(), session.question());
        assertTrue(session.message().startsWith("Not saved"), session.message());
        assertEquals(before, Files.readString(file));
        assertFalse(Files.exists(folder.resolve(".terrace-120.toml.draft")), "what cannot be read again is no draft");
        session.key(Stroke.command('Z'), false);
        assertEquals(Optional.empty(), session.side().trouble());
    }

    @Test
    void closingAsksWhereSomethingWouldBeLost() {
        press(Stroke.TAB, Stroke.RIGHT);
        session.key(Stroke.command('Q'), false);
        assertFalse(session.closed());
        assertTrue(session.question().orElseThrow().words().contains("terrace-120.toml"));
        press(Stroke.ESCAPE);
        assertFalse(session.closed());
        session.key(Stroke.command('Z'), false);
        session.key(Stroke.command('Q'), false);
        assertTrue(session.closed());
    }

    @Test
    void thePointerChoosesDragsMeasuresAndOrbits() {
        press('1');
        Pointer pointer = new Pointer(session);
        Vec3 at = pump().atM();
        double[] from = spot(at);
        double[] to = spot(at.plus(new Vec3(0.05, 0, -0.05)));
        pointer.press(0, Pointer.Button.MAIN, from[0], from[1], Drag.Way.BY_ITSELF);
        pointer.move(to[0], to[1]);
        assertEquals(at.x() + 0.05, pump().atM().x(), 1e-9, "shown while it is dragged");
        assertFalse(session.side().changed(), "and not decided on");
        pointer.cancel();
        assertEquals(at, pump().atM(), "let go of");
        pointer.press(0, Pointer.Button.MAIN, from[0], from[1], Drag.Way.BY_ITSELF);
        pointer.move(to[0], to[1]);
        pointer.release(to[0], to[1]);
        assertTrue(session.side().changed());
        assertEquals(Optional.of(new Thing(Kind.PUMP, 0)), session.selected());
        Camera before = session.camera();
        double[] open = spot(new Vec3(0.6, 0.25, 0.42));
        click(pointer, open);
        assertEquals(new Vec3(0.6, 0.25, 0.42).x(), session.pointM().orElseThrow().x(), 0.002);
        assertEquals(Optional.empty(), session.selected());
        assertEquals(before, session.camera(), "a click turns nothing");
        pointer.press(0, Pointer.Button.MAIN, open[0], open[1], Drag.Way.BY_ITSELF);
        pointer.move(open[0] + 80, open[1] + 20);
        pointer.release(open[0] + 80, open[1] + 20);
        assertNotEquals(before, session.camera());
    }

    /** A rock fills the view: it must be chosen before it can be dragged, so that turning the tank moves no rock. */
    @Test
    void aRockMovesOnlyOnceChosen() {
        press('3');
        Pointer pointer = new Pointer(session);
        double[] rock = spot(new Vec3(0.3, 0.24, 0.2));
        pointer.press(0, Pointer.Button.MAIN, rock[0], rock[1], Drag.Way.BY_ITSELF);
        pointer.move(rock[0] + 60, rock[1]);
        pointer.release(rock[0] + 60, rock[1]);
        assertFalse(session.side().changed());
        press('3');
        click(pointer, rock);
        assertEquals(Kind.ROCK, session.selected().orElseThrow().kind());
        pointer.press(0, Pointer.Button.MAIN, rock[0], rock[1], Drag.Way.BY_ITSELF);
        pointer.move(rock[0] + 60, rock[1]);
        pointer.release(rock[0] + 60, rock[1]);
        assertTrue(session.side().changed());
    }

    private void click(Pointer pointer, double[] at) {
        pointer.press(0, Pointer.Button.MAIN, at[0], at[1], Drag.Way.BY_ITSELF);
        pointer.release(at[0] + 1, at[1]);
    }

    private double[] spot(Vec3 pointM) {
        Camera.Spot spot = session.camera().spot(pointM, session.frame());
        return new double[] {spot.xPx(), spot.yPx()};
    }
}
