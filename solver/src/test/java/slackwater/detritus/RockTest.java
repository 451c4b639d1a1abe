package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.detritus.Release.From;
import slackwater.field.FlowRecord;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;

/** Grains and walls, and the count of them all. Laws, nothing to look up. */
class RockTest {
    /** A box cut in two by a wall one cell thick, with water that would go straight through it. */
    private static MadeFlow divided(boolean upright) {
        MadeFlow box = new MadeFlow(20, 12, 20, 0.01);
        for (int cell = 0; cell < box.fluid.length; cell++) {
            int across = upright ? cell % 20 : cell / 240;
            box.fluid[cell] = across != 10;
        }
        return box.fill(upright ? box.now.u() : box.now.w(), at -> upright ? 0.8 : -0.8)
                .fill(box.now.eddyViscosityM2PerS(), at -> 5e-5);
    }

    @Test
    void noGrainPassesThinRock() {
        for (boolean upright : new boolean[] {true, false}) {
            MadeFlow box = divided(upright);
            Vec3 from = upright ? new Vec3(0.05, 0.06, 0.1) : new Vec3(0.1, 0.06, 0.15);
            Release release = new Release(MadeFlow.grain(upright ? 0 : 0.05, 0), new From.Pinch(from, 0.02), 400, 1);
            box.fill(box.now.wallShear(), at -> 1);
            Scene after = MadeFlow.follow(box.tank(), box.steady(), release, 10).scenes().get(0);
            for (int n = 0; n < after.grains(); n++) {
                assertTrue(upright ? after.xM()[n] <= 0.1 : after.zM()[n] >= 0.11, "grain " + n + " of " + after);
            }
        }
    }

    @Test
    void noGrainLeavesTheWaterThroughRandomRock() {
        ForAll.seeds(5, random -> {
            MadeFlow rubble = rubble(random);
            Scene after = MadeFlow.follow(rubble.tank(), rubble.steady(),
                    new Release(MadeFlow.grain(0.02, 0.05), new From.Everywhere(), 500, 1), 10).scenes().get(0);
            for (int n = 0; n < after.grains(); n++) {
                Vec3 at = new Vec3(after.xM()[n], after.yM()[n], after.zM()[n]);
                assertTrue(rubble.fluid[rubble.grid.indexAt(at)], "grain " + n + " is in rock");
            }
        });
    }

    /**
     * Law: what lies has something under it. The slopes are those of a ball in the middle, so what slides goes out and
     * meets rock and glass at its side, also in cells that are open below.
     */
    @Test
    void nothingLiesOnOpenWater() {
        ForAll.seeds(5, random -> {
            MadeFlow rubble = rubble(random);
            Rock ball = new Rock("ball", new Ellipsoid(new Vec3(0.06, 0.055, 0), new Vec3(0.02, 0.02, 0.02)));
            FlowRecord record = rubble.steady();
            Scene after = MadeFlow.follow(rubble.tank(0, List.of(ball)), record,
                    new Release(MadeFlow.grain(0.02, 0.05), new From.Everywhere(), 2000, 1), 10).scenes().get(0);
            int onRock = 0;
            for (int n = 0; n < after.grains(); n++) {
                int cell = rubble.grid.indexAt(new Vec3(after.xM()[n], after.yM()[n], after.zM()[n]));
                onRock += after.place(n) == Place.ROCK ? 1 : 0;
                assertTrue(after.place(n) == Place.WATER || record.hasFloor(cell), "grain " + n + " hangs");
                assertTrue(after.place(n) != Place.ROCK || cell >= 12 * 11, "grain " + n + " lies on the pane");
            }
            assertTrue(onRock > 0, "some lie on rock");
        });
    }

    private static MadeFlow rubble(Random random) {
        MadeFlow rubble = new MadeFlow(12, 11, 10, 0.01);
        for (int cell = 0; cell < rubble.fluid.length; cell++) {
            rubble.fluid[cell] = random.nextInt(3) > 0;
        }
        return rubble.fill(rubble.now.u(), at -> 0.5 * random.nextGaussian())
                .fill(rubble.now.v(), at -> 0.5 * random.nextGaussian())
                .fill(rubble.now.w(), at -> 0.5 * random.nextGaussian())
                .fill(rubble.now.wallShear(), at -> 0.1 * random.nextDouble())
                .fill(rubble.now.eddyViscosityM2PerS(), at -> 1e-4 * random.nextDouble());
    }

    /** A tank with sand, a weir, shear that comes and goes: at every count each grain is somewhere, and once. */
    @Test
    void everyGrainIsCountedOnceOnAnyNumberOfThreads() {
        MadeFlow rubble = rubble(new Random(3));
        rubble.fill(rubble.now.outflowPerS(), at -> at.z() > 0.08 && at.x() < 0.03 ? 2 : 0);
        FlowRecord record = rubble.recorded(List.of(1.0, 0.3, -1.0, 0.1));
        List<Release> releases = List.of(new Release(MadeFlow.grain(0.02, 0.05), new From.Everywhere(), 700, 1),
                new Release(Grains.floc(), new From.Surface(), 301, 0.5));
        Schedule schedule = new Schedule(20, 0.2, List.of(5.0, 20.0));
        Drift one = Tracker.follow(rubble.tank(0.02, List.of()), record, releases, schedule,
                new Tracker.Chance(7, 1));
        for (int time = 0; time < one.census().times(); time++) {
            assertEquals(700, one.census().all(time, 0), "at count " + time);
            assertEquals(301, one.census().all(time, 1), "at count " + time);
        }
        assertEquals(101, one.census().times());
        int last = one.census().times() - 1;
        assertTrue(one.census().count(last, 0, Place.FILTER) > 0 && one.census().count(last, 0, Place.SAND) > 0
                && one.census().count(last, 0, Place.ROCK) > 0);
        for (int threads = 2; threads < 6; threads++) {
            Drift more = Tracker.follow(rubble.tank(0.02, List.of()), record, releases, schedule,
                    new Tracker.Chance(7, threads));
            for (int n = 0; n < 1001; n++) {
                assertEquals(one.scenes().get(1).xM()[n], more.scenes().get(1).xM()[n]);
                assertEquals(one.scenes().get(1).zM()[n], more.scenes().get(1).zM()[n]);
                assertEquals(one.scenes().get(1).place()[n], more.scenes().get(1).place()[n]);
            }
        }
    }

    /** Exact: a well mixed tank loses what floats in it as exp(-Q t/V). */
    @Test
    void theFilterEmptiesAMixedTank() {
        MadeFlow box = new MadeFlow(4, 4, 4, 0.01);
        box.fill(box.now.eddyViscosityM2PerS(), at -> 2e-4)
                .fill(box.now.outflowPerS(), at -> at.z() > 0.03 ? 0.08 : 0);
        Release release = new Release(MadeFlow.grain(0, 1), new From.Everywhere(), 3000, 1);
        Drift drift = Tracker.follow(box.tank(), box.steady(), List.of(release), new Schedule(50, 50,
                List.of(50.0)), new Tracker.Chance(1, 2));
        double left = drift.census().count(1, 0, Place.WATER) / 3000.0;
        // a quarter of the water at 0.08 a second: Q/V = 0.02 a second. Mixing takes some h^2/(10 K) = 0.6 s, by which
        // the weir's water is 1 % poorer; three standard errors of chance are 7 %
        assertEquals(Math.exp(-1), left, 0.08 * Math.exp(-1));
    }

    /**
     * Rock steeper than 45 degrees holds nothing. Of an ellipsoid with radii a, a, c the top is less steep within
     * r = a/sqrt(1 + (c/a)^2): exact geometry; allowed is half a cell of 1 cm in r and chance.
     */
    @Test
    void steepRockShedsWhatLandsOnIt() {
        assertEquals(Math.pow(1 / Math.sqrt(1 + 4), 2), onRock(new Vec3(0.08, 0.08, 0.16)), 0.10);
        assertEquals(Math.pow(1 / Math.sqrt(1 + 0.25), 2), onRock(new Vec3(0.08, 0.08, 0.04)), 0.12);
    }

    /** Share that stays on a rock in still water, of what falls within its width. */
    private static double onRock(Vec3 radii) {
        MadeFlow still = new MadeFlow(30, 30, 24, 0.01);
        Rock rock = new Rock("knob", new Ellipsoid(new Vec3(0.15, 0.15, 0), radii));
        for (int cell = 0; cell < still.fluid.length; cell++) {
            still.fluid[cell] = !rock.solid().contains(still.grid.centreM(cell));
        }
        Drift drift = MadeFlow.follow(still.tank(0, List.of(rock)), still.steady(),
                new Release(MadeFlow.grain(0.02, 1), new From.Surface(), 3000, 1), 40);
        assertEquals(0, drift.census().count(1, 0, Place.WATER), "all have come to rest");
        return drift.census().count(1, 0, Place.ROCK) / 3000.0 / (Math.PI * radii.x() * radii.y() / 0.09);
    }
}
