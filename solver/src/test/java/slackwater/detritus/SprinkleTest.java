package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.detritus.Release.From;
import slackwater.field.FlowRecord;
import slackwater.field.Passage;
import slackwater.field.Snapshot;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Box;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;

/** Grains in water that goes on: exact kinematics, and the same walk as that of a run. */
class SprinkleTest {
    private static final double SINK = 0.02;
    private static final double FRAME_S = 0.2;

    private static FlowRecord moments(MadeFlow flow, double fromS, double first, double second) {
        Passage passage = new Passage(flow.grid, flow.fluid);
        passage.see(at(flow, fromS, first));
        passage.see(at(flow, fromS + FRAME_S, second));
        return passage.record().orElseThrow();
    }

    private static Snapshot at(MadeFlow flow, double timeS, double factor) {
        float[] u = flow.now.u().clone();
        for (int cell = 0; cell < u.length; cell++) {
            u[cell] *= (float) factor;
        }
        return new Snapshot(timeS, u, flow.now.v(), flow.now.w(), flow.now.wallShear(),
                flow.now.eddyViscosityM2PerS(), flow.now.outflowPerS());
    }

    /** Exact: z = 0.35 m - w t, and at the bottom after 17.5 s. */
    @Test
    void inStillWaterItFallsAtItsSpeedAndLandsBelow() {
        MadeFlow still = new MadeFlow(20, 20, 40, 0.01);
        Sprinkle grains = new Sprinkle(still.tank(), 1);
        grains.letGo(new Release(MadeFlow.grain(SINK, 1), new From.Pinch(new Vec3(0.053, 0.121, 0.35), 1e-6), 10, 1));
        follow(grains, still, 20);
        Scene falling = grains.scene(0.01);
        follow(grains, still, 80);
        Scene landed = grains.scene(0.01);
        for (int n = 0; n < 10; n++) {
            assertEquals(Place.WATER, falling.place(n));
            assertEquals(0.35 - 4 * SINK, falling.zM()[n], 1e-4);
            assertEquals(Place.GLASS, landed.place(n));
            assertEquals(0, landed.zM()[n], 1e-5);
            assertEquals(0.053, landed.xM()[n], 1e-4);
        }
        assertEquals(20, landed.timeS(), 1e-6);
    }

    private static void follow(Sprinkle grains, MadeFlow flow, int times) {
        for (int n = 0; n < times; n++) {
            grains.follow(moments(flow, n * FRAME_S, 1, 1));
        }
    }

    /**
     * Moment by moment they go as through the whole record, on which the run's answers rest: those that are let go at
     * its first moment.
     */
    @Test
    void theyGoAsThroughTheWholeRecord() {
        MadeFlow stream = new MadeFlow(60, 10, 20, 0.01);
        stream.fill(stream.now.u(), at -> at.z() < 0.1 ? 0.05 : -0.03);
        // A power of two, so that the mean of two moments and that of all are the same to the last bit.
        stream.fill(stream.now.eddyViscosityM2PerS(), at -> Math.pow(2, -16));
        List<Double> factors = List.of(1.0, 0.25, -0.5, 0.75);
        Release release = new Release(MadeFlow.grain(0.01, 1), new From.Everywhere(), Tracker.TOGETHER, 1);
        Scene whole = MadeFlow.follow(stream.tank(), stream.recorded(factors), release, 4).scenes().get(0);
        Sprinkle grains = new Sprinkle(stream.tank(), 1);
        grains.letGo(release);
        for (int n = 0; n < 20; n++) {
            grains.follow(moments(stream, n * FRAME_S, factors.get(n % 4), factors.get((n + 1) % 4)));
        }
        Scene parts = grains.scene(0.01);
        assertArrayEquals(whole.place(), parts.place());
        assertArrayEquals(whole.xM(), parts.xM(), 1e-6f);
        assertArrayEquals(whole.yM(), parts.yM(), 1e-6f);
        assertArrayEquals(whole.zM(), parts.zM(), 1e-6f);
        assertTrue(IntStream.range(0, Tracker.TOGETHER).anyMatch(n -> parts.place(n) == Place.GLASS));
    }

    /** No grain is lost or made, whatever is let go and changed meanwhile; the same seed gives the same grains. */
    @Test
    void theCountHoldsAndChanceRepeats() {
        MadeFlow stream = new MadeFlow(20, 20, 20, 0.01);
        stream.fill(stream.now.u(), at -> 0.04);
        stream.fill(stream.now.eddyViscosityM2PerS(), at -> 1e-5);
        stream.fill(stream.now.outflowPerS(), at -> at.x() > 0.18 && at.z() > 0.18 ? 0.5 : 0);
        List<Scene> both = new ArrayList<>();
        for (int run = 0; run < 2; run++) {
            Sprinkle grains = new Sprinkle(stream.tank(), 7);
            grains.letGo(new Release(MadeFlow.grain(0.005, 0.5), new From.Surface(), 400, 1));
            follow(grains, stream, 20);
            assertEquals(400, grains.scene(0.01).grains());
            grains.letGo(new Release(MadeFlow.grain(SINK, 0.5), new From.Pinch(new Vec3(0.1, 0.1, 0.1), 0.02), 100, 1));
            assertEquals(500, grains.size());
            grains.change(stream.tank());
            follow(grains, stream, 20);
            both.add(grains.scene(0.01));
        }
        assertEquals(500, both.get(0).grains());
        assertArrayEquals(both.get(0).xM(), both.get(1).xM());
        assertArrayEquals(both.get(0).place(), both.get(1).place());
        assertTrue(IntStream.range(0, 500).anyMatch(n -> both.get(0).place(n) == Place.FILTER));
        assertTrue(IntStream.range(0, 500).anyMatch(n -> both.get(0).place(n) == Place.GLASS));
    }

    /** Rock that comes upon grains leaves them in water, and what lay where rock was falls on. */
    @Test
    void rockComesAndGoes() {
        MadeFlow open = new MadeFlow(20, 20, 20, 0.01);
        MadeFlow walled = new MadeFlow(20, 20, 20, 0.01);
        Rock rock = new Rock("block", new Box(Vec3.ZERO, new Vec3(0.1, 0.2, 0.08)));
        for (int cell = 0; cell < walled.fluid.length; cell++) {
            walled.fluid[cell] = !rock.solid().contains(walled.grid.centreM(cell));
        }
        Sprinkle grains = new Sprinkle(open.tank(), 1);
        grains.letGo(new Release(MadeFlow.grain(SINK, 1), new From.Everywhere(), 500, 1));
        follow(grains, open, 5);
        grains.change(walled.tank(0, List.of(rock)));
        follow(grains, walled, 100);
        Scene onRock = grains.scene(0.01);
        assertTrue(IntStream.range(0, 500).anyMatch(n -> onRock.place(n) == Place.ROCK));
        for (int n = 0; n < 500; n++) {
            assertTrue(walled.fluid[walled.grid.indexAt(new Vec3(onRock.xM()[n], onRock.yM()[n], onRock.zM()[n]))]);
        }
        grains.change(open.tank());
        follow(grains, open, 100);
        Scene after = grains.scene(0.01);
        assertTrue(IntStream.range(0, 500).allMatch(n -> after.place(n) == Place.GLASS));
    }

    @Test
    void aPinchInRockIsRefusedAndTheOthersGoOn() {
        MadeFlow walled = new MadeFlow(10, 10, 10, 0.01);
        for (int cell = 0; cell < walled.fluid.length; cell++) {
            walled.fluid[cell] = walled.grid.centreM(cell).x() > 0.05;
        }
        Sprinkle grains = new Sprinkle(walled.tank(), 1);
        grains.letGo(new Release(MadeFlow.grain(SINK, 1), new From.Everywhere(), 10, 1));
        grains.letGo(new Release(MadeFlow.grain(SINK, 1), new From.Pinch(new Vec3(0.02, 0.05, 0.05), 0.01), 10, 1));
        assertThrows(UnfitGrid.class, () -> follow(grains, walled, 1));
        follow(grains, walled, 1);
        assertEquals(10, grains.scene(0.01).grains());
    }
}
