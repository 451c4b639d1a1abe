package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.discretisation.TimePlan;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioReader;

/** What is told before a start, counted by hand. */
class CostTest {
    /** A batch is a turn of the water; here 40 steps. */
    private static final TimePlan PLAN = new TimePlan(0.005, 10, 4, true);

    /**
     * By docs/numerics.md: at rest a run spins up for 3 to 10 batches, with a flow for 1, and averages 6 to 16. Cells
     * twice as large are an eighth as many and take half the steps (exact).
     */
    @Test
    void aCompanionIsASixteenth() {
        double infinite = Double.POSITIVE_INFINITY;
        assertArrayEquals(new double[] {40 * 9, 40 * 26}, Cost.steps(PLAN, true, infinite));
        assertArrayEquals(new double[] {40 * 7, 40 * 17}, Cost.steps(PLAN, false, infinite));
        assertArrayEquals(new double[] {40 * (7 + 9 / 16.0), 40 * (17 + 26 / 16.0)}, Cost.steps(PLAN, 2, infinite));
        assertArrayEquals(new double[] {40 * (7 + 9 / 81.0), 40 * (17 + 26 / 81.0)}, Cost.steps(PLAN, 3, infinite));
    }

    @Test
    void aRunCutShortIsToldAsShort() {
        assertArrayEquals(new double[] {40 * 5.5, 40 * 5.5}, Cost.steps(PLAN, true, 5));
        assertArrayEquals(new double[] {40 * (7 + 8.5 / 16), 40 * (8.5 + 8.5 / 16)}, Cost.steps(PLAN, 2, 8));
    }

    @Test
    void whereNothingRunsNothingIsComputed() throws Exception {
        Scenario nano = ScenarioReader.read(Path.of("..", "scenarios", "nano-30.toml"));
        Scenario still = nano.with(List.of());
        assertEquals(0, TrialCost.of(still, Fidelity.quick(0.03, 1, 1), 1).seconds());
    }
}
