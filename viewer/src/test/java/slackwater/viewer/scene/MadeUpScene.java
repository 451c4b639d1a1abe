package slackwater.viewer.scene;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Doubt;
import slackwater.analysis.Reading;
import slackwater.analysis.Verdict;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;

/** The example tank with invented water: a slow roll about the tank's length, and still corners low at the back. */
public final class MadeUpScene {
    private static final Verdict[] VERDICTS = {Verdict.PASS, Verdict.MARGINAL, Verdict.FAIL};

    private MadeUpScene() {
    }

    public static Scenario scenario() {
        try {
            return ScenarioReader.read(Path.of("..", "scenarios", "terrace-120.toml"));
        } catch (ScenarioFaults faults) {
            throw new AssertionError(faults);
        }
    }

    /** @param cellSizeM of the water's grid */
    public static Scene scene(double cellSizeM, boolean settled) {
        Scenario scenario = scenario();
        return new Scene(scenario, Optional.of(water(scenario, cellSizeM, settled)), readings(scenario));
    }

    private static Water water(Scenario scenario, double h, boolean settled) {
        Vec3 inside = scenario.tank().insideM();
        Grid grid = new Grid((int) Math.round(inside.x() / h), (int) Math.round(inside.y() / h),
                (int) Math.round(scenario.tank().waterLevelM() / h), h);
        boolean[] fluid = new boolean[grid.cells()];
        float[][] values = new float[8][grid.cells()];
        float[] still = new float[grid.cells()];
        for (int cell = 0; cell < fluid.length; cell++) {
            Vec3 at = grid.centreM(cell);
            fluid[cell] = at.z() > scenario.tank().sandDepthM()
                    && scenario.rocks().stream().noneMatch(rock -> rock.solid().contains(at));
            if (fluid[cell]) {
                double across = at.y() - inside.y() / 2;
                double above = at.z() - 0.26;
                values[0][cell] = (float) (0.06 * Math.cos(4 * at.x()));
                values[1][cell] = (float) (-0.5 * above);
                values[2][cell] = (float) (0.5 * across);
                values[3][cell] = (float) Math.sqrt(values[0][cell] * values[0][cell]
                        + values[1][cell] * values[1][cell] + values[2][cell] * values[2][cell]);
                values[4][cell] = 1.1f * values[3][cell];
                values[5][cell] = 0.002f;
                values[6][cell] = at.z() < scenario.tank().sandDepthM() + h ? 0.02f + 0.05f * (float) at.x() : 0;
                double off = at.minus(new Vec3(1.05, 0.45, 0.1)).length();
                still[cell] = (float) (1 / (1 + Math.exp((off - 0.15) / 0.02)));
            }
        }
        return new Water(new FlowStatistics(grid, fluid, values[0], values[1], values[2], values[3], values[4],
                values[5], values[6], values[7]), still, settled);
    }

    /** The same scene with grains in rows: half of them drift low over the sand, half lie on it at the front. */
    public static Scene withGrains(Scene scene) {
        float[] drifting = new float[3 * 60];
        float[] lying = new float[3 * 60];
        for (int n = 0; n < 60; n++) {
            drifting[3 * n] = 0.1f + 0.05f * (n % 20);
            drifting[3 * n + 1] = 0.1f;
            drifting[3 * n + 2] = 0.3f + 0.05f * (n / 20);
            lying[3 * n] = 0.1f + 0.05f * (n % 20);
            lying[3 * n + 1] = 0.03f + 0.03f * (n / 20);
            lying[3 * n + 2] = (float) scene.scenario().tank().sandDepthM() + 0.001f;
        }
        Water water = scene.water().orElseThrow();
        return scene.with(new Water(water.flow(), water.stillProbability(), water.deposits(),
                List.of(new Crumbs("food", 25, drifting, lying, 0, 30, 0)), water.settled()));
    }

    private static List<CoralReading> readings(Scenario scenario) {
        return IntStream.range(0, scenario.corals().size()).mapToObj(n -> {
            Coral coral = scenario.corals().get(n);
            return new CoralReading(coral, new Reading(0.031 * (n + 1), 0.04 * (n + 1), 0.06 * (n + 1), 0.002, 0.004),
                    new Doubt(0.004, OptionalDouble.empty(), 0), CoralNeeds.rangeFor(coral),
                    VERDICTS[n % VERDICTS.length], "Made up.");
        }).toList();
    }
}
