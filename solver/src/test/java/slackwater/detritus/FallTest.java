package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.detritus.Release.From;
import slackwater.field.FlowRecord;
import slackwater.geometry.Vec3;

/** Grains in water whose every motion is known: exact kinematics, nothing to look up. */
class FallTest {
    private static final double SINK = 0.02;

    @Test
    void inStillWaterItFallsAtItsSpeedAndLandsBelow() {
        MadeFlow still = new MadeFlow(20, 20, 40, 0.01);
        Vec3 from = new Vec3(0.053, 0.121, 0.35);
        Release release = new Release(MadeFlow.grain(SINK, 1), new From.Pinch(from, 1e-6), 10, 1);
        Drift drift = Tracker.follow(still.tank(), still.steady(), List.of(release),
                new Schedule(20, 1, List.of(4.0, 20.0)), new Tracker.Chance(1, 2));
        Scene falling = drift.scenes().get(0);
        Scene landed = drift.scenes().get(1);
        for (int n = 0; n < 10; n++) {
            assertEquals(Place.WATER, falling.place(n));
            assertEquals(0.35 - 4 * SINK, falling.zM()[n], 1e-4);
            assertEquals(Place.GLASS, landed.place(n));
            assertEquals(0, landed.zM()[n], 1e-5);
            assertEquals(0.053, landed.xM()[n], 1e-4);
            assertEquals(0.121, landed.yM()[n], 1e-4);
        }
        assertEquals(10, drift.census().count(17, 0, Place.WATER), "0.35 m at 2 cm/s take 17.5 s");
        assertEquals(10, drift.census().count(18, 0, Place.GLASS));
    }

    @Test
    void aSteadyStreamCarriesItAsFarAsItFallsLong() {
        MadeFlow stream = new MadeFlow(60, 10, 20, 0.01);
        stream.fill(stream.now.u(), at -> 0.03);
        Release release = new Release(MadeFlow.grain(SINK, 1), new From.Pinch(new Vec3(0.1, 0.05, 0.1), 1e-6), 4, 1);
        Scene landed = MadeFlow.follow(stream.tank(), stream.steady(), release, 10).scenes().get(0);
        assertEquals(Place.GLASS, landed.place(0));
        assertEquals(0.1 + 0.03 * 0.1 / SINK, landed.xM()[0], 1e-3);
    }

    /** Rigid rotation of period 2 s: after five turns the midpoint rule still has it on its circle. */
    @Test
    void aWhirlKeepsItOnItsCircle() {
        MadeFlow whirl = new MadeFlow(40, 40, 4, 0.01);
        whirl.stream(at -> -Math.PI * (at.y() - 0.2), at -> Math.PI * (at.x() - 0.2), at -> 0);
        Release release = new Release(MadeFlow.grain(0, 1), new From.Pinch(new Vec3(0.3, 0.2, 0.02), 1e-6), 1, 1);
        Scene after = MadeFlow.follow(whirl.tank(), whirl.steady(), release, 10).scenes().get(0);
        assertEquals(0.1, Math.hypot(after.xM()[0] - 0.2, after.yM()[0] - 0.2), 0.002);
    }

    /** Exact: a whirl of 0.04 s a turn is back where it was after a frame of 0.2 s, 314 cells further on its way. */
    @Test
    void quickWaterIsFollowedToTheEndOfAFrame() {
        MadeFlow whirl = new MadeFlow(40, 40, 4, 0.01);
        double turn = 2 * Math.PI / 0.04;
        whirl.stream(at -> -turn * (at.y() - 0.2), at -> turn * (at.x() - 0.2), at -> 0);
        Release release = new Release(MadeFlow.grain(0, 1), new From.Pinch(new Vec3(0.3, 0.2, 0.02), 1e-6), 1, 1);
        Scene after = MadeFlow.follow(whirl.tank(), whirl.steady(), release, 0.2).scenes().get(0);
        // the midpoint rule runs ahead by theta^3/6 each step of theta = 0.05: 0.013 of the radius in five turns
        assertEquals(0.3, after.xM()[0], 0.002);
        assertEquals(0.2, after.yM()[0], 0.002);
    }

    @Test
    void waterThatCannotBeIsSaidToBe() {
        MadeFlow still = new MadeFlow(10, 10, 10, 0.01);
        still.fill(still.now.wallShear(), at -> 1);
        Release release = new Release(MadeFlow.grain(1e6, 0), new From.Pinch(new Vec3(0.05, 0.05, 0.05), 1e-6), 1, 1);
        IllegalStateException lost = assertThrows(IllegalStateException.class,
                () -> MadeFlow.follow(still.tank(), still.steady(), release, 1));
        assertTrue(lost.getCause().getMessage().contains("100000 steps"), lost.getCause().getMessage());
    }

    /** Between two frames the water changes evenly: a stream that swings as +1, 0, -1, 0 goes nowhere on the whole. */
    @Test
    void timeIsReadBetweenFrames() {
        MadeFlow stream = new MadeFlow(60, 10, 10, 0.01);
        stream.fill(stream.now.u(), at -> 0.1);
        FlowRecord swing = stream.recorded(List.of(1.0, 0.0, -1.0, 0.0));
        Release release = new Release(MadeFlow.grain(0, 1), new From.Pinch(new Vec3(0.3, 0.05, 0.05), 1e-6), 1, 1);
        Drift drift = Tracker.follow(stream.tank(), swing, List.of(release),
                new Schedule(8, 8, List.of(0.2, 8.0)), new Tracker.Chance(1, 1));
        assertEquals(0.3 + 0.1 * 0.2 / 2, drift.scenes().get(0).xM()[0], 2e-4, "a fifth of a second from 1 to 0");
        assertEquals(0.3, drift.scenes().get(1).xM()[0], 1e-3);
    }

    /** Diffusion in still water, exact: the variance grows as 2 K t in each direction (Einstein 1905). */
    @Test
    void eddiesSpreadItAsTheyShould() {
        double eddy = 1e-4;
        MadeFlow box = new MadeFlow(40, 40, 40, 0.01);
        box.fill(box.now.eddyViscosityM2PerS(), at -> eddy);
        Release release = new Release(MadeFlow.grain(0, 1), new From.Pinch(new Vec3(0.2, 0.2, 0.2), 1e-6), 4000, 1);
        Scene after = MadeFlow.follow(box.tank(), box.steady(), release, 5).scenes().get(0);
        double squares = 0;
        for (int n = 0; n < 4000; n++) {
            squares += Math.pow(after.xM()[n] - 0.2, 2) + Math.pow(after.zM()[n] - 0.2, 2);
        }
        double expected = 2 * eddy / Eddies.SCHMIDT * 5;
        assertEquals(expected, squares / 8000, 0.06 * expected, "four standard errors of 8000 squares");
        assertTrue(after.place(0) == Place.WATER);
    }
}
