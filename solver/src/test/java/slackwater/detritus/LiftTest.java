package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.detritus.Release.From;
import slackwater.field.FlowRecord;
import slackwater.geometry.Box;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/** When grains lift: a published speed, and that thresholds do what they say. */
class LiftTest {
    private static final double MUD_M = 0.0002;

    /**
     * Fresh salmon waste lifts at 0.018 Pa (Cromey and others 2002, Estuaries 25:916, abstract), which the same authors
     * give as 9.5 cm/s two metres above the bed (Aquaculture 214:211, from memory). Over mud (z0 = 0.2 mm, Soulsby
     * 1997, table of roughness, from memory) that speed is a logarithmic profile, in which a coral with rough flesh is
     * put on the bottom. Its drag is to be what lifts the waste, within the 20 % that 10 % of the speed, the spread of
     * z0 over muddy sands, is in stress.
     */
    @Test
    void theDragInThePublishedStreamIsWhatLiftsFreshWaste() {
        MadeFlow stream = new MadeFlow(20, 20, 20, 0.01);
        stream.fill(stream.now.u(), at -> 0.095 * Math.log(at.z() / MUD_M) / Math.log(2 / MUD_M));
        Coral coral = new Coral("coral", CoralGroup.SMALL_POLYP, new Vec3(0.1, 0.1, 0), new Vec3(0, 0, 1), 0.08,
                Optional.empty());
        Ground ground = new Ground(stream.tank(coral), stream.grid, stream.fluid);
        FlowRecord record = stream.steady();
        double dragPa = Drag.over(0, ground, record, new Water(record)).meanPa();
        assertEquals(0.018, dragPa, 0.2 * 0.018);
        assertEquals(0.018, Grains.floc().smoothPa(), "the published threshold is what the grains have");
    }

    /**
     * Of our own wiring, not of nature: that waste lifts at the thresholds it was given on each ground. They are the
     * measured ones, 0.06 Pa on smooth ground, 0.12 on sand, 0.32 on broken rock (Carvajalino-Fernandez and others
     * 2020, Aquacult. Environ. Interact. 12:117, abstract), and go in as they come out.
     * Grains differ by 25 %, so at half of it none lifts, at just that about half of them (15 of 100 are three standard
     * deviations of chance), at twice as much all.
     */
    @Test
    void wasteLiftsFromEachGroundAtTheThresholdItWasGiven() {
        Map<Place, Double> published = Map.of(Place.GLASS, 0.06, Place.SAND, 0.12, Place.ROCK, 0.32);
        published.forEach((ground, stressPa) -> {
            assertEquals(0, left(ground, 0.5 * stressPa), 1, ground.words());
            assertEquals(50, left(ground, stressPa), 15, ground.words());
            assertEquals(100, left(ground, 2 * stressPa), 1, ground.words());
        });
    }

    /** How many of 100 grains do not lie on a ground under a stress. */
    private static int left(Place ground, double stressPa) {
        MadeFlow box = new MadeFlow(10, 10, 10, 0.01);
        for (int cell = 0; cell < 200 && ground != Place.GLASS; cell++) {
            box.fluid[cell] = false;
        }
        double sandM = ground == Place.SAND ? 0.02 : 0;
        Release release = new Release(Grains.waste(), new From.Everywhere(), 100, 1);
        Rock rock = new Rock("floor", new Box(new Vec3(-1, -1, -1), new Vec3(1, 1, 0.02)));
        box.fill(box.now.wallShear(), at -> stressPa);
        Drift drift = MadeFlow.follow(box.tank(sandM, ground == Place.ROCK ? List.of(rock) : List.of()),
                box.steady(), release, 30);
        return 100 - drift.census().count(1, 0, ground);
    }

    /**
     * Common practice, no source: what lies on a level plate goes when strong water passes over it, and stays in still
     * water. The stress on a plate is that of the law of the wall over smooth ground.
     */
    @Test
    void aPlateIsClearedByStrongWaterAlone() {
        assertEquals(Clearance.Outcome.CLEARS, onPlate(0.30));
        assertEquals(Clearance.Outcome.STAYS, onPlate(0.01));
    }

    /**
     * Worked by hand: with a speed that is known to 40 % the stress is uncertain by 1.4^2 = 1.96 upwards and by
     * 1/0.6^2 = 2.78 downwards; as logarithms 0.673 and 1.022, with 0.693 for the thresholds 0.966 and 1.235.
     */
    @Test
    void theDoubtOfTheSpeedWidensThatOfTheThresholds() {
        assertEquals(List.of(0.5, 1.0, 2.0), rounded(Clearance.holds(0)));
        assertEquals(List.of(0.381, 1.0, 3.437), rounded(Clearance.holds(0.4)));
        assertEquals(List.of(1.0, 1.0), List.of(Clearance.holds(0.2).get(1), Clearance.holds(9).get(1)));
        assertTrue(Clearance.holds(Double.POSITIVE_INFINITY).stream().allMatch(hold -> hold > 0 && hold < 500));
        assertEquals(Clearance.Outcome.CLEARS, sandOnPlate(0));
        assertEquals(Clearance.Outcome.UNSURE, sandOnPlate(0.5));
    }

    /** Grains have dice of their own, so those on corals go the same way whether or not others are in the water. */
    @Test
    void onCoralsAloneTheAnswerIsTheSame() {
        MadeFlow stream = new MadeFlow(30, 20, 20, 0.01);
        stream.fill(stream.now.u(), at -> 0.12).fill(stream.now.eddyViscosityM2PerS(), at -> 2e-5);
        Coral plate = new Coral("plate", CoralGroup.PLATING, new Vec3(0.1, 0.1, 0.1), new Vec3(0, 0, 1), 0.08,
                Optional.empty());
        Scenario tank = stream.tank(plate);
        Tracker.Chance chance = new Tracker.Chance(1, 2);
        Litter alone = Trials.onCorals(tank, stream.steady(), List.of(0.1), chance);
        assertEquals(Trials.make(tank, stream.steady(), List.of(0.1), chance).clearances(), alone.clearances());
        assertEquals(List.of(), alone.fates());
    }

    private static List<Double> rounded(List<Double> holds) {
        return holds.stream().map(hold -> Math.round(1000 * hold) / 1000.0).toList();
    }

    private static Clearance.Outcome sandOnPlate(double speedDoubt) {
        return onPlate(0.30, speedDoubt).of(0).get(1).outcome();
    }

    private static Clearance.Outcome onPlate(double speedMPerS) {
        Litter litter = onPlate(speedMPerS, 0);
        assertEquals(2, litter.clearances().size());
        assertTrue(litter.clearances().stream().map(Clearance::outcome).distinct().count() == 1);
        return litter.clearances().get(0).outcome();
    }

    private static Litter onPlate(double speedMPerS, double speedDoubt) {
        MadeFlow stream = new MadeFlow(30, 20, 20, 0.01);
        stream.fill(stream.now.u(), at -> speedMPerS).fill(stream.now.eddyViscosityM2PerS(), at -> 2e-5);
        Coral plate = new Coral("plate", CoralGroup.PLATING, new Vec3(0.1, 0.1, 0.1), new Vec3(0, 0, 1), 0.08,
                Optional.empty());
        return Trials.make(stream.tank(plate), stream.steady(), List.of(speedDoubt), new Tracker.Chance(1, 2));
    }

    /** Exact: in still water a plate takes the share that its disc has of the tank's area; chance 3 standard errors. */
    @Test
    void aPlateTakesWhatSinksOntoIt() {
        MadeFlow still = new MadeFlow(30, 20, 20, 0.01);
        Coral plate = new Coral("plate", CoralGroup.PLATING, new Vec3(0.15, 0.1, 0.1), new Vec3(0, 0, 1), 0.14,
                Optional.empty());
        Scene after = MadeFlow.follow(still.tank(plate), still.steady(),
                new Release(MadeFlow.grain(0.02, 1), new From.Surface(), 4000, 1), 20).scenes().get(0);
        long onPlate = IntStream.range(0, 4000).filter(n -> after.place(n) == Place.CORAL).count();
        double share = Math.PI * 0.07 * 0.07 / (0.3 * 0.2);
        assertEquals(share, onPlate / 4000.0, 3 * Math.sqrt(share * (1 - share) / 4000));
    }

    /** A pump that keeps half of what goes through it, once through; chance 3 standard errors. */
    @Test
    void aPumpKeepsItsShare() {
        MadeFlow stream = new MadeFlow(40, 20, 20, 0.01);
        stream.fill(stream.now.u(), at -> 0.1);
        Scenario tank = stream.tank();
        Pump pump = new Pump("pump", 0.001, new Outlet.Round(0.08), new Vec3(0.2, 0.1, 0.1), 0, 0, 0, 1, 0, 1,
                Pattern.STEADY);
        Scenario pumped = new Scenario("pumped", tank.tank(), List.of(), List.of(pump), Optional.empty(),
                Optional.empty(), List.of());
        Grain half = new Grain("half", 0.001, 1100, 0, 0, 1, 1, 1, 0.5, "made up");
        Drift drift = MadeFlow.follow(pumped, stream.steady(),
                new Release(half, new From.Pinch(new Vec3(0.1, 0.1, 0.1), 0.01), 1000, 1), 3);
        assertEquals(500, drift.census().count(1, 0, Place.PUMP), 3 * Math.sqrt(250));
        assertEquals(1000, drift.census().all(1, 0));
    }
}
