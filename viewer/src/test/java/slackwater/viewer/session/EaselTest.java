package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.geometry.Vec3;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.Edits;
import slackwater.viewer.edit.Tanks;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Legend;
import slackwater.viewer.scene.Units;

/** Two tanks at one window, and the pictures of them as data. */
class EaselTest {
    private static final double TOP_M_PER_S = 0.3;

    @TempDir
    private Path folder;
    private Session session;
    private Side first;
    private Side second;

    @BeforeEach
    void open() throws Exception {
        Path file = folder.resolve("nano-30.toml");
        Files.copy(Tanks.FOLDER.resolve("nano-30.toml"), file);
        first = Side.live(ScenarioFile.open(file), () -> 0.0254, 1);
        second = Side.live(ScenarioFile.open(file), () -> 0.0254, 1);
        session = new Session(List.of(first, second), Units.METRIC);
        await(() -> first.mean().isPresent() && second.mean().isPresent());
        session.perform(Action.PAUSE);
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

    /** What has not changed is the very same object, so that it is not made and sent again. */
    @Test
    void onlyWhatChangedIsMadeAnew() throws InterruptedException {
        settleThreads();
        Easel easel = new Easel();
        session.perform(Action.STREAMLINES);
        Drawing one = easel.draw(session, first, TOP_M_PER_S, 0.03);
        Drawing other = easel.draw(session, first, TOP_M_PER_S, 0.03);
        assertEquals(one.items().size(), other.items().size());
        List<Item> anew = new ArrayList<>();
        for (int n = 0; n < one.items().size(); n++) {
            if (one.items().get(n) != other.items().get(n)) {
                anew.add(other.items().get(n));
            }
        }
        assertEquals(List.of(), anew, "not even the specks, since the water is paused");
        session.perform(Action.TRACERS);
        session.select(Optional.of(new Thing(Kind.PUMP, 0)));
        Drawing before = easel.draw(session, first, TOP_M_PER_S, 0.03);
        session.perform(Action.MOVE_UP);
        Drawing after = easel.draw(session, first, TOP_M_PER_S, 0.03);
        assertSame(before.items().get(0), after.items().get(0), "the glass");
        assertNotEquals(before.items(), after.items());
    }

    /** The map of the shear lies on the rock as it is now, though the water is still that of before. */
    @Test
    void theMapGoesWithTheRock() throws InterruptedException {
        settleThreads();
        Easel easel = new Easel();
        session.perform(Action.SHEAR);
        session.perform(Action.TRACERS);
        Drawing before = easel.draw(session, first, TOP_M_PER_S, 0.03);
        assertEquals(before.items(), easel.draw(session, first, TOP_M_PER_S, 0.03).items());
        Thing rock = new Thing(Kind.ROCK, 0);
        first.layout().preview(Edits.moved(first.scenario(), rock,
                rock.atM(first.scenario()).plus(new Vec3(0.01, 0, 0))));
        List<Item> fresh = new ArrayList<>(easel.draw(session, first, TOP_M_PER_S, 0.03).items());
        fresh.removeAll(before.items());
        assertTrue(fresh.stream().anyMatch(item -> item.paint().map().isPresent()), "the map is made anew");
    }

    /** A window that draws never waits for surfaces: the picture before stands until the new one is made. */
    @Test
    void theLastPictureStandsUntilTheNextIsMade() throws InterruptedException {
        settleThreads();
        session.perform(Action.TRACERS);
        List<Runnable> work = new ArrayList<>();
        Easel easel = new Easel(work::add);
        easel.draw(session, first, TOP_M_PER_S, 0.03);
        work.forEach(Runnable::run);
        work.clear();
        Drawing before = easel.draw(session, first, TOP_M_PER_S, 0.03);
        assertEquals(List.of(), work, "nothing changed");
        session.perform(Action.SLICE_Y);
        assertEquals(before.items(), easel.draw(session, first, TOP_M_PER_S, 0.03).items());
        session.perform(Action.SLICE_X);
        assertEquals(before.items(), easel.draw(session, first, TOP_M_PER_S, 0.03).items());
        assertEquals(2, work.size(), "each by itself");
        work.remove(0).run();
        int one = easel.draw(session, first, TOP_M_PER_S, 0.03).items().size();
        assertEquals(before.items().size() + 1, one, "the first slice");
        work.remove(0).run();
        assertEquals(one + 1, easel.draw(session, first, TOP_M_PER_S, 0.03).items().size(), "and the second");
        assertEquals(before.items().size(), new Easel(work::add).draw(session, first, TOP_M_PER_S, 0.03).items().size(),
                "the tank is there at once");
    }

    /** What is switched off does not linger until something else is made; on again, it is not what it was long ago. */
    @Test
    void whatIsSwitchedOffIsGoneAtOnce() throws InterruptedException {
        settleThreads();
        session.perform(Action.TRACERS);
        List<Runnable> work = new ArrayList<>();
        Easel easel = new Easel(work::add);
        int bare = easel.draw(session, first, TOP_M_PER_S, 0.03).items().size();
        for (Action action : List.of(Action.SLICE_X, Action.SLICE_Y, Action.FAST_WATER, Action.SHEAR,
                Action.STREAMLINES)) {
            session.perform(action);
            easel.draw(session, first, TOP_M_PER_S, 0.03);
            work.forEach(Runnable::run);
            work.clear();
            Drawing shown = easel.draw(session, first, TOP_M_PER_S, 0.03);
            assertNotEquals(bare, shown.items().size(), action + " shows");
            session.perform(action);
            Drawing gone = easel.draw(session, first, TOP_M_PER_S, 0.03);
            assertEquals(bare, gone.items().size(), action + " lingers");
            assertEquals(List.of(), gone.legends().stream().filter(Legend.Bar.class::isInstance).toList());
            session.perform(action);
            assertEquals(bare, easel.draw(session, first, TOP_M_PER_S, 0.03).items().size(), action + " is stale");
            session.perform(action);
        }
        assertFalse(work.isEmpty(), "nothing of it waited for the workshop");
    }

    /** The panel and the legend read the level of fast water from one place: the picture that is drawn. */
    @Test
    void fastWaterHasOneLevel() throws InterruptedException {
        settleThreads();
        List<Runnable> work = new ArrayList<>();
        Easel easel = new Easel(work::add);
        session.perform(Action.FAST_WATER);
        easel.draw(session, first, TOP_M_PER_S, 0.03);
        assertEquals(Optional.empty(), first.drawnFastMPerS(), "not made yet");
        work.forEach(Runnable::run);
        String legend = easel.draw(session, first, TOP_M_PER_S, 0.03).legends().toString();
        double level = first.drawnFastMPerS().orElseThrow();
        assertTrue(legend.contains("fast water: above " + Units.METRIC.speed(level) + " cm/s"), legend);
        session.perform(Action.PAUSE);
        await(() -> first.water().map(session.showing()::fastMPerS).filter(now -> now != level).isPresent());
        String still = easel.draw(session, first, TOP_M_PER_S, 0.03).legends().toString();
        assertTrue(still.contains("fast water: above " + Units.METRIC.speed(level) + " cm/s"), still);
        assertEquals(level, first.drawnFastMPerS().orElseThrow(), "the water is ahead, the picture is not");
    }

    /** A step may be under way while the clock is stopped. */
    private void settleThreads() throws InterruptedException {
        await(() -> first.flow().orElseThrow().resting() && second.flow().orElseThrow().resting());
    }

    /** Numbers are grey and still water is not told of until the flow has found its way. */
    @Test
    void nothingUnsettledLooksSettled() {
        Drawing drawing = new Easel().draw(session, first, TOP_M_PER_S, 0.03);
        assertTrue(drawing.labels().stream().filter(label -> label.detail().contains("cm/s"))
                .allMatch(label -> label.pale()));
        assertEquals(2, drawing.labels().stream().filter(label -> label.detail().contains("cm/s")).count());
        assertTrue(drawing.labels().stream().noneMatch(label -> label.detail().contains("Pass")
                || label.detail().contains("Fail")), "a verdict comes from a run alone");
        assertTrue(drawing.notes().toString().contains("numbers are grey"), drawing.notes().toString());
        assertTrue(drawing.notes().toString().contains("Still water shows once"), drawing.notes().toString());
        assertFalse(drawing.legends().toString().contains("still water"));
    }

    @Test
    void keysActOnTheTankThatIsChosenAndLooksAreShared() {
        session.perform(Action.OTHER_SIDE);
        assertEquals(1, session.active());
        session.perform(Action.NEXT);
        session.perform(Action.MOVE_UP);
        assertTrue(second.changed());
        assertFalse(first.changed());
        session.perform(Action.VIEW_FRONT);
        session.perform(Action.SLICE_Y);
        session.point(Optional.of(new Vec3(0.15, 0.15, 0.2)));
        Drawing left = new Easel().draw(session, first, TOP_M_PER_S, 0.03);
        Drawing right = new Easel().draw(session, second, TOP_M_PER_S, 0.03);
        assertEquals(bar(left).scale(), bar(right).scale(), "one scale");
        assertEquals(left.boxM(), right.boxM());
    }

    private static Legend.Bar bar(Drawing drawing) {
        return drawing.legends().stream().filter(Legend.Bar.class::isInstance).map(Legend.Bar.class::cast)
                .findFirst().orElseThrow();
    }

    @Test
    void theDifferenceSaysWhatItComparesAndWhetherItHolds() throws InterruptedException {
        settleThreads();
        session.perform(Action.DIFFERENCE);
        assertTrue(session.showing().difference());
        Difference difference = new Difference();
        Drawing drawing = difference.draw(session);
        assertEquals(List.of("nano-30.toml less nano-30.toml: not settled yet."), drawing.notes());
        assertEquals(2, drawing.labels().size());
        assertTrue(drawing.labels().get(0).detail().matches("[+\u2212][0-9.]+ cm/s"), drawing.labels().toString());
        assertEquals(drawing, difference.draw(session), "nothing changed");
        session.perform(Action.SLICE_Z);
        Drawing sliced = difference.draw(session);
        assertNotSame(drawing, sliced);
        session.perform(Action.OTHER_SIDE);
        session.select(Optional.of(new Thing(Kind.CORAL, 0)));
        session.perform(Action.REMOVE);
        assertEquals(0, difference.draw(session).labels().size(), "readings of the layout before are not told");
    }
}
