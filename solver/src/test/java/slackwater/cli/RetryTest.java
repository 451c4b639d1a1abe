package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.TimePlan;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.simulation.Progress;
import slackwater.simulation.RunLimits;
import slackwater.simulation.RunOutcome;
import slackwater.simulation.RunOutcome.Averaged;
import slackwater.simulation.RunOutcome.Diverged;
import slackwater.simulation.Simulator;

/** Water that goes faster than any source drives it: found by hand beside the sweep of random tanks. */
class RetryTest {
    private static final String POOL = """
            name = "pool"
            [tank]
            inside_cm = [40, 20, 20]
            water_level_cm = 20
            """;
    private static final String STRONG_RETURN = """
            [return]
            flow_l_per_h = 50000
            nozzle_mm = 60
            at_cm = [5, 10, 10]
            [overflow]
            wall = "right"
            from_cm = 0
            to_cm = 20
            """;
    private final List<RunOutcome> attempts = new ArrayList<>();

    private RunOutcome run(String toml, int steps) throws ScenarioFaults {
        Setup setup = Setup.of(ScenarioReader.read(toml, "retry.toml", Path.of("")), 0.01, 1);
        return Retry.simulate(setup, tried -> {
            Discretisation made = tried.discretisation();
            TimePlan brief = new TimePlan(made.plan().timeStepS(), 20, steps / 60, true);
            attempts.add(Simulator.simulate(new Discretisation(made.voxels(), made.units(), brief, made.problem()),
                    List.of(), new RunLimits(0), new CpuBackend(1), Progress.SILENT));
            return attempts.get(attempts.size() - 1);
        });
    }

    /** Fourteen pumps chase the water round an oval: each adds its push, so speeds add in squares. */
    @Test
    void halfTheStepCarriesTwiceTheSpeed() throws ScenarioFaults {
        StringBuilder oval = new StringBuilder("""
                name = "oval"
                [tank]
                inside_cm = [40, 10, 5]
                water_level_cm = 5
                [[rock]]
                shape = "box"
                min_cm = [5, 4.5, -1]
                max_cm = [35, 5.5, 6]
                """);
        for (int n = 0; n < 7; n++) {
            oval.append(pump(5 + 4.5 * n, 2.5, 0)).append(pump(35 - 4.5 * n, 7.5, 180));
        }
        Averaged flow = assertInstanceOf(Averaged.class, run(oval.toString(), 6000));
        assertEquals(2, attempts.size(), "one attempt that ran away, one that did not");
        assertEquals(0.45, flow.quality().greatestMach(), 0.05, "more than half of what ends an attempt");
    }

    private static String pump(double x, double y, double yaw) {
        return String.format(Locale.ROOT, "[[pump]]%nflow_l_per_h = 10000%noutlet_mm = 30%n"
                + "at_cm = [%.2f, %.2f, 2.5]%nyaw_deg = %.1f%n", x, y, yaw);
    }

    /** 50 000 L/h through a hole of 1 cm2 would go 139 m/s: nothing but words can come of it. */
    @Test
    void whatCannotBeIsReported() throws ScenarioFaults {
        String wall = "[[rock]]%nshape = \"box\"%nmin_cm = [20, %d, %d]%nmax_cm = [22, %d, %d]%n";
        String hole = String.format(wall, -1, -1, 10, 21) + String.format(wall, 11, -1, 21, 21)
                + String.format(wall, -1, -1, 21, 10) + String.format(wall, -1, 11, 21, 21);
        Diverged diverged = assertInstanceOf(Diverged.class, run(POOL + hole + STRONG_RETURN, 18_000));
        assertEquals(4, attempts.size());
        assertTrue(diverged.waterTimeS() > 0 && diverged.waterTimeS() < 60, diverged.toString());
        assertEquals(0.21, diverged.atM().x(), 0.03, "in the hole");
        assertEquals(0.105, diverged.atM().y(), 0.02, "in the hole");
        assertTrue(diverged.advice().contains("widen a gap"), diverged.advice());
    }
}
