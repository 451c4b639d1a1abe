package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.geometry.Vec3;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.Tanks;
import slackwater.viewer.scene.Crumbs;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Legend;
import slackwater.viewer.scene.Units;

/** Grains let go in a tank at the window, by keys. */
class StrewingTest {
    @TempDir
    private Path folder;
    private Session session;

    @BeforeEach
    void open() throws Exception {
        Path file = folder.resolve("nano-30.toml");
        Files.copy(Tanks.FOLDER.resolve("nano-30.toml"), file);
        session = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.0254, 1)), Units.METRIC);
        await(() -> session.side().snapshot().isPresent());
    }

    @AfterEach
    void close() {
        session.close();
    }

    private static void await(BooleanSupplier reached) throws InterruptedException {
        long end = System.currentTimeMillis() + 60_000;
        while (!reached.getAsBoolean()) {
            assertFalse(System.currentTimeMillis() > end, "waited in vain");
            Thread.sleep(5);
        }
    }

    private Optional<Crumbs> crumbs() {
        return session.side().crumbs(session.showing().kind());
    }

    @Test
    void grainsFallAndTheLegendTellsOfThem() throws InterruptedException {
        session.key(Stroke.of('B'), false);
        assertTrue(session.showing().shows(Layer.GRAINS));
        await(() -> crumbs().filter(grains -> grains.timeS() > 0.5).isPresent());
        session.perform(Action.PAUSE);
        await(() -> session.side().flow().orElseThrow().resting());
        assertEquals(1500, crumbs().orElseThrow().all());
        assertSame(crumbs().orElseThrow(), crumbs().orElseThrow(), "none moved");
        Drawing drawing = new Easel().draw(session, session.side(), 0.3, 0.03);
        List<String> words = drawing.legends().stream().filter(Legend.Patches.class::isInstance)
                .flatMap(legend -> ((Legend.Patches) legend).patches().stream()).map(Legend.Patch::words).toList();
        assertTrue(words.stream().anyMatch(line -> line.startsWith("food in the water after ")), words.toString());
        session.perform(Action.PAUSE);
        session.key(Stroke.of('B'), false);
        await(() -> crumbs().isEmpty());
    }

    @Test
    void aPausedClockIsToldOf() {
        session.perform(Action.PAUSE);
        session.key(Stroke.of('B'), false);
        assertEquals("The water is paused: grains fall once it goes on (Space).", session.message());
    }

    /** Another kind is let go at once, and takes the place of the one before. */
    @Test
    void kindsGoRound() throws InterruptedException {
        session.key(Stroke.of('B'), false);
        await(() -> crumbs().isPresent());
        session.key(Stroke.of('Q'), false);
        assertEquals("pellets", session.showing().kind());
        assertEquals("Grains are pellets now.", session.message());
        await(() -> crumbs().filter(grains -> grains.what().equals("pellets")).isPresent());
        for (String kind : List.of("waste", "floc", "sand", "food")) {
            session.key(Stroke.of('Q'), false);
            assertEquals(kind, session.showing().kind());
        }
    }

    @Test
    void aPinchNeedsAPointInTheWater() throws InterruptedException {
        session.key(Stroke.shift('B'), false);
        assertTrue(session.message().startsWith("Click into the water first"), session.message());
        session.point(Optional.of(new Vec3(0.15, 0.15, 0.001)));
        session.key(Stroke.shift('B'), false);
        assertEquals("There is no water at the measuring point.", session.message());
        assertFalse(session.showing().shows(Layer.GRAINS));
        session.point(Optional.of(new Vec3(0.15, 0.05, 0.22)));
        session.key(Stroke.shift('B'), false);
        assertEquals("", session.message());
        assertTrue(session.showing().shows(Layer.GRAINS));
        await(() -> crumbs().map(Crumbs::all).orElse(0) == 300);
        session.key(Stroke.shift('B'), false);
        await(() -> crumbs().map(Crumbs::all).orElse(0) == 600);
    }
}
