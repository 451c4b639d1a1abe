package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.field.FlowStatistics;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.lattice.BodyForce;
import slackwater.scenario.Outlet;
import slackwater.scenario.Overflow;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Return;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;
import slackwater.scenario.Wall;
import slackwater.simulation.Progress;
import slackwater.simulation.RunLimits;
import slackwater.simulation.RunOutcome;
import slackwater.simulation.Simulator;

/** Laws that a tank must keep, from scenario to averages. Source: conservation and symmetry; nothing to look up. */
class TankLawsTest {
    private static final double CELL_M = 0.02;
    private static final Vec3 INSIDE = new Vec3(0.6, 0.4, 0.42);
    private static final double WATER_M = 0.4;

    private static Scenario tank(List<Pump> pumps, double rockX, Optional<Return> line) {
        Rock rock = new Rock("rock", new Ellipsoid(new Vec3(rockX, 0.22, 0.05), new Vec3(0.12, 0.1, 0.14)));
        return new Scenario("laws", new Tank(INSIDE, WATER_M, 0, 0.001), List.of(rock), pumps, line,
                line.map(r -> new Overflow(Wall.BACK, 0.2, 0.4)), List.of());
    }

    private static Pump pump(double x, double yawDeg) {
        return pump(x, yawDeg, 3000);
    }

    private static Pump pump(double x, double yawDeg, double litresPerHour) {
        return new Pump("pump", litresPerHour / 3.6e6, new Outlet.Round(0.04), new Vec3(x, 0.16, 0.28),
                Math.toRadians(yawDeg), Math.toRadians(-6), 0, 1, 0, 1, Pattern.STEADY);
    }

    private static RunOutcome.Averaged run(Scenario scenario) {
        Voxels voxels = Voxels.of(scenario.tank(), scenario.rocks(), CELL_M);
        return (RunOutcome.Averaged) Simulator.simulate(Discretiser.discretise(scenario, voxels, 3), List.of(),
                RunLimits.NONE, new CpuBackend(2), Progress.SILENT);
    }

    @Test
    void thrustIsDensityTimesFlowSquaredOverArea() {
        Scenario scenario = tank(List.of(pump(0.1, 20)), 0.35, Optional.empty());
        Discretisation made = Discretiser.discretise(scenario,
                Voxels.of(scenario.tank(), scenario.rocks(), CELL_M), 1);
        BodyForce force = made.problem().forces().get(0);
        double thrustN = Math.sqrt(force.fx() * force.fx() + force.fy() * force.fy() + force.fz() * force.fz())
                / made.units().force(1);
        double flow = 3000 / 3.6e6;
        assertEquals(1023.34 * flow * flow / (Math.PI / 4 * 0.04 * 0.04), thrustN, 1e-6 * thrustN);
    }

    @Test
    void noPumpNoFlow() {
        RunOutcome.Averaged still = run(tank(List.of(), 0.35, Optional.empty()));
        for (float speed : still.statistics().meanSpeed()) {
            assertEquals(0, speed, 0);
        }
        assertTrue(still.quality().settled());
    }

    /** Return in, overflow out: the water's mass drifts by less than 1e-5 of the whole in a minute. */
    @Test
    void whatTheReturnBringsTheOverflowTakes() {
        Return line = new Return(800 / 3.6e6, 0.03, new Vec3(0.5, 0.35, 0.36), Math.toRadians(200), 0);
        RunOutcome.Averaged flow = run(tank(List.of(), 0.35, Optional.of(line)));
        assertTrue(Math.abs(flow.quality().massDriftPerMinute()) < 1e-5, flow.quality().toString());
        assertTrue(flow.quality().greatestMach() > 0.05, "the return must move the water");
    }

    /**
     * A mirrored tank has the mirrored mean flow. The turbulence is not mirrored, so the two agree as well as two runs
     * of one tank do: correlation above 0.9 and mean speed within 10 %.
     */
    @Test
    void mirroredTankMirroredFlow() {
        FlowStatistics one = run(tank(List.of(pump(0.06, 12)), 0.36, Optional.empty())).statistics();
        FlowStatistics other = run(tank(List.of(pump(0.54, 168)), 0.24, Optional.empty())).statistics();
        int nx = one.grid().nx();
        int cells = one.grid().cells();
        double[] here = new double[2 * cells];
        double[] there = new double[2 * cells];
        double sumHere = 0;
        double sumThere = 0;
        for (int n = 0; n < cells; n++) {
            int mirrored = n - n % nx + nx - 1 - n % nx;
            assertEquals(one.fluid()[n], other.fluid()[mirrored]);
            here[2 * n] = one.meanU()[n];
            there[2 * n] = -other.meanU()[mirrored];
            here[2 * n + 1] = one.meanW()[n];
            there[2 * n + 1] = other.meanW()[mirrored];
            sumHere += one.meanSpeed()[n];
            sumThere += other.meanSpeed()[n];
        }
        double correlation = new PearsonsCorrelation().correlation(here, there);
        assertTrue(correlation > 0.9, "correlation " + correlation);
        assertEquals(1, sumHere / sumThere, 0.1);
    }

    /**
     * Reynolds similarity, dimensional analysis: at high Reynolds numbers twice the output makes twice the speed
     * everywhere. Each run knows its cells from a few batches only, so the tank's mean, which averages over all cells,
     * is held to 5 %, and of the cells nine in ten to 2.57 standard errors (Student's t, 95 %, six batches).
     */
    @Test
    void twiceTheOutputTwiceTheSpeed() {
        FlowStatistics one = run(tank(List.of(pump(0.1, 20, 3000)), 0.35, Optional.empty())).statistics();
        FlowStatistics two = run(tank(List.of(pump(0.1, 20, 6000)), 0.35, Optional.empty())).statistics();
        double sumOne = 0;
        double sumTwo = 0;
        int water = 0;
        int within = 0;
        for (int n = 0; n < one.fluid().length; n++) {
            if (one.fluid()[n]) {
                double error = Math.hypot(2 * one.standardErrorSpeed()[n], two.standardErrorSpeed()[n]);
                water++;
                within += Math.abs(two.meanSpeed()[n] - 2 * one.meanSpeed()[n]) < 2.57 * error ? 1 : 0;
                sumOne += one.meanSpeed()[n];
                sumTwo += two.meanSpeed()[n];
            }
        }
        assertEquals(2, sumTwo / sumOne, 0.1);
        assertTrue(within > 0.9 * water, within + " of " + water);
    }
}
