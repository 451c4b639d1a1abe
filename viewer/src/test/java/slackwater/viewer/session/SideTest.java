package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.Edits;
import slackwater.viewer.edit.Tanks;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;
import slackwater.viewer.scene.Units;

/** One tank, and what becomes of its layouts. */
class SideTest {
    @TempDir
    private Path folder;

    /** Looking into a layout may take its time: it is shown at once, and of several only the last one counts. */
    @Test
    void layoutsAreLookedIntoBeside() throws Exception {
        Path file = folder.resolve("terrace-120.toml");
        Files.copy(Tanks.FOLDER.resolve("terrace-120.toml"), file);
        List<Runnable> work = new ArrayList<>();
        try (Side side = Side.live(ScenarioFile.open(file), () -> 0.04, 1, work::add)) {
            Scenario start = side.scenario();
            Thing pump = new Thing(Kind.PUMP, 0);
            Scenario inRock = Edits.moved(start, pump, start.rocks().get(0).solid().bounds().centre());
            side.layout().change("one", inRock);
            assertEquals(inRock, side.scenario());
            assertEquals(Optional.empty(), side.trouble());
            work.remove(0).run();
            assertTrue(side.trouble().orElseThrow().contains("cannot stand so"), side.trouble().toString());
            side.layout().change("two", Edits.moved(start, pump, start.rocks().get(1).solid().bounds().centre()));
            Vec3 lower = start.pumps().get(0).atM().plus(new Vec3(0, 0, -0.02));
            side.layout().change("three", Edits.moved(start, pump, lower));
            work.remove(0).run();
            assertTrue(side.trouble().isPresent(), "the one in between is passed over, so the first trouble stands");
            assertFalse(Files.exists(folder.resolve(".terrace-120.toml.draft")));
            work.remove(0).run();
            assertEquals(Optional.empty(), side.trouble());
            assertTrue(Files.exists(folder.resolve(".terrace-120.toml.draft")));
        }
    }

    /** Ctrl S does not wait for what is found out beside the window, and asks about the layout as it is by then. */
    @Test
    void savingIsLookedIntoBeside() throws Exception {
        Path file = folder.resolve("terrace-120.toml");
        Files.copy(Tanks.FOLDER.resolve("terrace-120.toml"), file);
        String before = Files.readString(file);
        List<Runnable> work = new ArrayList<>();
        try (Session session = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.04, 1, work::add)),
                Units.METRIC)) {
            session.select(Optional.of(new Thing(Kind.PUMP, 0)));
            session.perform(Action.MOVE_RIGHT);
            session.perform(Action.SAVE);
            assertEquals(Optional.empty(), session.question());
            assertEquals("Looking whether this can be saved.", session.message());
            session.perform(Action.MOVE_UP);
            runAll(work);
            session.attend();
            assertEquals(Optional.empty(), session.question(), "it is another layout by now, so it is looked at anew");
            runAll(work);
            session.attend();
            assertTrue(session.question().isPresent());
            session.answer(true);
            assertEquals("Saved to terrace-120.toml.", session.message());
            assertEquals(before.replace("at_cm = [4, 18, 36]", "at_cm = [5, 18, 37]"), Files.readString(file));
            runAll(work);
            assertFalse(Files.exists(folder.resolve(".terrace-120.toml.draft")));
        }
    }

    private static void runAll(List<Runnable> work) {
        while (!work.isEmpty()) {
            work.remove(0).run();
        }
    }
}
