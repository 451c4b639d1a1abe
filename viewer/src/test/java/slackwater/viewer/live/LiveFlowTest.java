package slackwater.viewer.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import slackwater.detritus.Grain;
import slackwater.detritus.Grains;
import slackwater.detritus.Scene;
import slackwater.field.Settling.Stage;
import slackwater.geometry.Box;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.viewer.edit.Edits;
import slackwater.viewer.edit.Tanks;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;

class LiveFlowTest {
    private static final long PATIENCE_MS = 60_000;
    private static final Thing PUMP = new Thing(Kind.PUMP, 0);

    @Test
    void waterComesAndSettles() throws InterruptedException {
        try (LiveFlow flow = new LiveFlow(Tanks.nano(), () -> 0.0254, 1)) {
            await(() -> flow.latest().isPresent());
            await(() -> flow.latest().get().settling().settled());
            Snapshot settled = flow.latest().get();
            assertEquals(2, settled.mean().orElseThrow().assessment().corals().size());
            assertTrue(settled.pace() > 0);
            Scenario turned = Edits.aimed(Tanks.nano(), PUMP, 1, 0);
            flow.change(turned);
            await(() -> flow.latest().get().scenario().equals(turned));
            assertEquals(Stage.DEVELOPING, flow.latest().get().settling().stage());
            assertTrue(flow.latest().get().waterS() >= settled.waterS(), "the clock of the water went back");
            assertEquals(Optional.empty(), flow.failure());
        }
    }

    @Test
    void aPausedFlowStandsStill() throws InterruptedException {
        try (LiveFlow flow = new LiveFlow(Tanks.nano(), () -> 0.0254, 1)) {
            await(() -> flow.latest().map(Snapshot::waterS).orElse(0.0) > 0.2);
            flow.pause(true);
            await(flow::resting);
            double at = flow.latest().get().waterS();
            Thread.sleep(200);
            assertEquals(at, flow.latest().get().waterS());
            flow.pause(false);
            await(() -> flow.latest().get().waterS() > at);
        }
    }

    /** Without pumps steps are long, too long for water that still moves: they stay short until it has slowed down. */
    @Test
    void pumpsCanBeSwitchedOffWithoutAnyTrouble() throws InterruptedException {
        Scenario nano = Tanks.nano();
        try (LiveFlow flow = new LiveFlow(nano, () -> 0.0254, 1)) {
            await(() -> flow.latest().map(Snapshot::waterS).orElse(0.0) > 6);
            Scenario off = Edits.without(nano, PUMP);
            flow.change(off);
            await(() -> flow.latest().get().scenario().equals(off));
            double at = flow.latest().get().waterS();
            await(() -> flow.latest().get().waterS() > at + 8 || flow.trouble().isPresent());
            assertEquals(Optional.empty(), flow.trouble());
        }
    }

    /** Grains rain, a pinch comes beside them, a layout changes: none is lost; then all are taken away. */
    @Test
    void grainsFallInTheWaterUnderWay() throws InterruptedException {
        Scenario nano = Tanks.nano();
        Grain food = Grains.named(Grains.FOOD, nano).orElseThrow();
        try (LiveFlow flow = new LiveFlow(nano, () -> 0.0254, 1)) {
            await(() -> flow.latest().isPresent());
            assertEquals(Optional.empty(), flow.latest().get().grains());
            flow.rain(food);
            await(() -> flow.latest().get().grains().filter(sown -> sown.scene().timeS() > 1).isPresent());
            Scene first = flow.latest().get().grains().get().scene();
            assertEquals(1500, first.grains());
            await(() -> meanHeight(flow.latest().get().grains().get().scene()) < meanHeight(first) - 0.03);
            flow.pinch(food, new Vec3(0.15, 0.15, 0.2));
            flow.change(Edits.aimed(nano, PUMP, 1, 0));
            await(() -> flow.latest().get().grains().get().scene().grains() == 1800);
            double at = flow.latest().get().grains().get().scene().timeS();
            await(() -> flow.latest().get().grains().get().scene().timeS() > at + 1);
            Scene after = flow.latest().get().grains().get().scene();
            assertEquals(1800, after.grains());
            for (int n = 0; n < after.grains(); n++) {
                assertTrue(after.zM()[n] >= 0 && after.zM()[n] <= nano.tank().waterLevelM() + 0.0254);
            }
            flow.clear();
            await(() -> flow.latest().get().grains().isEmpty());
            assertEquals(Optional.empty(), flow.trouble());
        }
    }

    private static double meanHeight(Scene scene) {
        double sum = 0;
        for (float z : scene.zM()) {
            sum += z;
        }
        return sum / scene.grains();
    }

    /** Whatever ends the water is told of, in words; nothing else watches its thread. */
    @Test
    void whatEndsTheWaterIsTold() throws InterruptedException {
        assertEquals("The water stopped, since there is no more memory: take larger cells (--cell-cm), or give it more"
                + " with the environment variable SLACKWATER_MEMORY (for example 8g).", end(new OutOfMemoryError()));
        assertEquals("The water stopped by a fault of ours (java.lang.StackOverflowError: deep).",
                end(new StackOverflowError("deep")));
    }

    private static String end(Error broken) throws InterruptedException {
        try (LiveFlow flow = new LiveFlow(Tanks.nano(), () -> {
            throw broken;
        }, 1)) {
            await(() -> flow.failure().isPresent());
            return flow.failure().get();
        }
    }

    /** Cells too coarse for a layout: said, and the water of the last one that fits goes on. */
    @Test
    void whatDoesNotFitIsSaidAndTheWaterGoesOn() throws InterruptedException {
        Scenario nano = Tanks.nano();
        try (LiveFlow flow = new LiveFlow(nano, () -> 0.0254, 1)) {
            await(() -> flow.latest().isPresent());
            flow.change(Edits.with(nano, new Rock("wall", new Box(Vec3.ZERO, new Vec3(0.1, 0.305, 0.3)))));
            await(() -> flow.trouble().isPresent());
            assertTrue(flow.trouble().get().startsWith("The water goes on as before: "), flow.trouble().get());
            double at = flow.latest().get().waterS();
            await(() -> flow.latest().get().waterS() > at);
            assertEquals(nano, flow.latest().get().scenario());
            flow.change(nano);
            await(() -> flow.trouble().isEmpty());
        }
    }

    /** A step ten times too long: the numbers run away, the water goes on with shorter ones, and it is said. */
    @Test
    void whatRunsAwayGoesOnWithShorterSteps() throws InterruptedException {
        Scenario nano = Tanks.nano();
        try (LiveFlow flow = new LiveFlow(nano, () -> 0.0254, 1, tries -> tries == 0 ? 10 : 0.5)) {
            await(() -> flow.trouble().isPresent());
            assertTrue(flow.trouble().get().contains("ran away near x"), flow.trouble().get());
            assertTrue(flow.trouble().get().endsWith("going on from the last good water with shorter steps."));
            double at = flow.latest().get().waterS();
            await(() -> flow.latest().get().waterS() > at + 1);
            assertEquals(Optional.empty(), flow.failure());
        }
    }

    /** Where no step helps, the last good water stays in sight and the next layout starts from it. */
    @Test
    void whatRunsAwayForGoodStopsAtTheLastGoodWater() throws InterruptedException {
        Scenario nano = Tanks.nano();
        AtomicBoolean wild = new AtomicBoolean(true);
        try (LiveFlow flow = new LiveFlow(nano, () -> 0.0254, 1, tries -> wild.get() ? 10 : 1)) {
            await(() -> flow.trouble().map(says -> says.contains("Your layout is kept.")).orElse(false));
            Snapshot last = flow.latest().orElseThrow();
            for (float speed : last.velocity().u()) {
                assertTrue(Math.abs(speed) < 10, "the picture shows numbers that ran away: " + speed);
            }
            wild.set(false);
            Scenario turned = Edits.aimed(nano, PUMP, 1, 0);
            flow.change(turned);
            await(() -> flow.latest().get().scenario().equals(turned) && flow.latest().get().waterS()
                    > last.waterS() + 1);
            assertEquals(Optional.empty(), flow.trouble());
        }
    }

    @Test
    void cellsAreChosenForThePace() {
        Scenario terrace = Tanks.terrace();
        double slow = Liveliness.cellSizeM(terrace, 3e6);
        double quick = Liveliness.cellSizeM(terrace, 3e7);
        assertTrue(quick < slow && quick >= 0.01 && slow <= 0.05, quick + " and " + slow);
        assertEquals(0.01, Liveliness.cellSizeM(terrace, 1e12));
        assertTrue(Liveliness.cellsPerS(1) > 1e5);
    }

    private static void await(BooleanSupplier reached) throws InterruptedException {
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (!reached.getAsBoolean()) {
            assertFalse(System.currentTimeMillis() > end, "waited in vain");
            Thread.sleep(5);
        }
    }
}
