package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;
import slackwater.viewer.scene.Units;

/** Saving, drafts and closing, at a window without the window. */
class KeepingTest extends AtTheTerrace {
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
}
