package slackwater.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.field.FlowStatistics;
import slackwater.field.Settling.Stage;
import slackwater.field.Velocity;
import slackwater.geometry.Box;
import slackwater.geometry.Vec3;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioReader;
import slackwater.simulation.RunOutcome.Averaged;
import slackwater.simulation.RunOutcome.Diverged;

class LiveRunTest {
    private static final double CELL_M = 0.0254;
    private static final Scenario NANO = nano();

    private static Scenario nano() {
        try {
            return ScenarioReader.read(Path.of("..", "scenarios", "nano-30.toml"));
        } catch (Exception broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static Discretisation on(Scenario scenario) {
        return on(scenario, 1);
    }

    private static Discretisation on(Scenario scenario, double haste) {
        Voxels voxels = Voxels.of(scenario.tank(), scenario.rocks(), CELL_M);
        return Discretiser.discretise(scenario, voxels, 1, haste);
    }

    /** Watched or run, the water is the same: bit for bit, by the same rules on when it has settled. */
    @Test
    void watchingGivesWhatARunGives() {
        Averaged expected = (Averaged) Simulator.simulate(on(NANO), List.of(), RunLimits.NONE, new CpuBackend(1),
                Progress.SILENT);
        try (LiveRun live = new LiveRun(on(NANO), List.of(), new CpuBackend(1))) {
            while (!live.settling().settled()) {
                assertEquals(Optional.empty(), live.advance());
            }
            FlowStatistics found = live.averaged().orElseThrow().statistics();
            assertArrayEquals(expected.statistics().meanSpeed(), found.meanSpeed(), 0);
            assertArrayEquals(expected.statistics().meanU(), found.meanU(), 0);
            assertArrayEquals(expected.statistics().rmsSpeed(), found.rmsSpeed(), 0);
            assertArrayEquals(expected.statistics().standardErrorSpeed(), found.standardErrorSpeed(), 0);
            assertEquals(1, live.settling().share());
        }
    }

    /** Steady pumps are sampled at every second look, pulses at each. */
    @Test
    void pulsesAreSampledTwiceAsOften() {
        Pump pump = NANO.pumps().get(0);
        Discretisation steady = on(pumps(pulsing(pump, Pattern.STEADY)));
        Discretisation pulses = on(pumps(pulsing(pump, new Pattern(Pattern.Kind.PULSE, 4, 0.3, 0))));
        assertEquals(steady.plan().thinned(), Course.plan(steady));
        assertEquals(pulses.plan(), Course.plan(pulses));
    }

    private static Pump pulsing(Pump pump, Pattern pattern) {
        return new Pump(pump.name(), pump.flowM3PerS(), pump.outlet(), pump.atM(), pump.yawRad(), pump.pitchRad(),
                pump.rollRad(), pump.outputFraction(), pump.foulingFraction(), pump.thrustFactor(), pattern);
    }

    @Test
    void aMovedPumpGoesOnFromThePresentWater() {
        try (LiveRun live = new LiveRun(on(NANO), List.of(), new CpuBackend(1))) {
            run(live, 3);
            Velocity before = live.velocity();
            Pump pump = NANO.pumps().get(0);
            live.change(on(pumps(turned(pump, pump.yawRad() + 0.5, 1))), List.of());
            assertEquals(Stage.DEVELOPING, live.settling().stage());
            assertEquals(0, live.settling().sinceChangeS());
            assertTrue(live.averaged().isEmpty());
            assertTrue(difference(before, live.velocity()) < 0.02, "the water jumped by "
                    + difference(before, live.velocity()) + " of its speed");
            run(live, 3);
            assertTrue(difference(before, live.velocity()) > 0.2, "the water took no notice");
        }
    }

    /** Half the output lets the step be twice as long: the water must not notice. */
    @Test
    void anotherStepKeepsTheVelocity() {
        try (LiveRun live = new LiveRun(on(NANO), List.of(), new CpuBackend(1))) {
            run(live, 3);
            Velocity before = live.velocity();
            double stepS = live.discretisation().plan().timeStepS();
            live.change(on(pumps(turned(NANO.pumps().get(0), NANO.pumps().get(0).yawRad(), 0.5))), List.of());
            assertTrue(live.discretisation().plan().timeStepS() > 1.8 * stepS);
            assertTrue(difference(before, live.velocity()) < 0.03, "jumped by " + difference(before,
                    live.velocity()));
            run(live, 0.1);
            assertTrue(difference(before, live.velocity()) < 0.3, "jumped by " + difference(before,
                    live.velocity()));
        }
    }

    @Test
    void newRockStopsTheWaterInItAndNowhereElse() {
        try (LiveRun live = new LiveRun(on(NANO), List.of(), new CpuBackend(1))) {
            run(live, 2);
            Velocity before = live.velocity();
            List<Rock> rocks = new ArrayList<>(NANO.rocks());
            rocks.add(new Rock("new", new Box(new Vec3(0.2, 0.2, 0.02), new Vec3(0.26, 0.26, 0.08))));
            Scenario more = new Scenario(NANO.name(), NANO.tank(), rocks, NANO.pumps(), NANO.returnLine(),
                    NANO.overflow(), NANO.corals());
            live.change(on(more), List.of());
            Velocity now = live.velocity();
            int stopped = 0;
            for (int n = 0; n < now.u().length; n++) {
                assertEquals(now.fluid()[n] ? before.u()[n] : 0, now.u()[n], 1e-3);
                stopped += before.fluid()[n] && !now.fluid()[n] ? 1 : 0;
            }
            assertTrue(stopped > 3);
            run(live, 1);
            live.change(on(NANO), List.of());
            run(live, 1);
            assertTrue(live.averaged().isPresent());
        }
    }

    @Test
    void whatRanAwayGoesOnFromTheLastGoodState() {
        // Ten times the step: faster than sound on the lattice.
        try (LiveRun live = new LiveRun(on(NANO), List.of(), new CpuBackend(1))) {
            run(live, 6);
            Velocity good = live.velocity();
            live.change(on(NANO, 10), List.of());
            Optional<Diverged> end = Optional.empty();
            for (int n = 0; n < 200 && end.isEmpty(); n++) {
                end = live.advance();
            }
            assertTrue(end.isPresent(), "a step ten times too long did no harm");
            live.change(on(NANO), List.of());
            assertTrue(difference(good, live.velocity()) < 0.1, "not the last good water");
            run(live, 1);
            assertFalse(Float.isNaN(live.averaged().orElseThrow().statistics().meanSpeed()[200]));
        }
    }

    private static void run(LiveRun live, double waterS) {
        double end = live.waterS() + waterS;
        while (live.waterS() < end) {
            assertEquals(Optional.empty(), live.advance());
        }
    }

    /** r.m.s. of the difference as a share of the r.m.s. speed. */
    private static double difference(Velocity one, Velocity other) {
        double apart = 0;
        double all = 0;
        for (int n = 0; n < one.u().length; n++) {
            apart += square(one.u()[n] - other.u()[n]) + square(one.v()[n] - other.v()[n])
                    + square(one.w()[n] - other.w()[n]);
            all += square(one.u()[n]) + square(one.v()[n]) + square(one.w()[n]);
        }
        return Math.sqrt(apart / all);
    }

    private static double square(double value) {
        return value * value;
    }

    private static Pump turned(Pump pump, double yawRad, double output) {
        return new Pump(pump.name(), pump.flowM3PerS(), pump.outlet(), pump.atM(), yawRad, pump.pitchRad(),
                pump.rollRad(), output, pump.foulingFraction(), pump.thrustFactor(), pump.pattern());
    }

    private static Scenario pumps(Pump... pumps) {
        return new Scenario(NANO.name(), NANO.tank(), NANO.rocks(), List.of(pumps), NANO.returnLine(),
                NANO.overflow(), NANO.corals());
    }
}
