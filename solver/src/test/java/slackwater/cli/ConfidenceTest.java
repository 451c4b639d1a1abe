package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.simulation.RunOutcome;

/** Ranges, companion and pumps through the whole program. */
class ConfidenceTest {
    private static final Path NANO = Path.of("..", "scenarios", "nano-30.toml");

    @TempDir
    private Path folder;

    /** What is known about the doubt changes ranges and chances, never a reading. */
    @Test
    void doubtMovesNoReading() throws IOException {
        JsonObject both = run();
        JsonObject one = run("--one-grid");
        JsonObject pumps = run("--pump-uncertainty", "20%");
        for (int n = 0; n < 2; n++) {
            JsonObject coral = coral(both, n);
            assertEquals(coral.get("mean_speed_cm_per_s"), coral(one, n).get("mean_speed_cm_per_s"));
            assertEquals(coral.get("mean_speed_cm_per_s"), coral(pumps, n).get("mean_speed_cm_per_s"));
            assertEquals(coral.get("margin_95_cm_per_s"), coral(one, n).get("margin_95_cm_per_s"));
            assertEquals(coral.get("grid_doubt_cm_per_s"), coral(pumps, n).get("grid_doubt_cm_per_s"));
            assertTrue(coral(one, n).get("grid_doubt_cm_per_s").isJsonNull());
            assertTrue(width(coral(one, n)) < width(coral), "cells add doubt");
            assertTrue(width(coral) < width(coral(pumps, n)), "pumps add doubt");
            assertEquals(0.2 * coral.get("mean_speed_cm_per_s").getAsDouble(),
                    coral(pumps, n).get("pump_doubt_cm_per_s").getAsDouble(), 1e-4);
        }
        assertEquals(4, both.getAsJsonObject("confidence").get("companion_cell_size_cm").getAsDouble());
        assertTrue(words(one).contains("How much their size matters was not computed"), words(one));
        assertTrue(words(one).contains("--one-grid"), words(one));
        assertTrue(words(both).contains("cells of 4 cm"), words(both));
        assertTrue(words(both).contains("Were all of them up to 20 % off"), words(both));
        assertTrue(words(pumps).contains("20 % more or less"), words(pumps));
    }

    @Test
    void theRatioOfTheCellsIsTheUsersToChoose() throws IOException {
        JsonObject result = run("--grid-ratio", "1.5");
        assertEquals(3, result.getAsJsonObject("confidence").get("companion_cell_size_cm").getAsDouble());
        assertTrue(words(result).contains("cells of 3 cm"), words(result));
    }

    @Test
    void aPercentageMayCarryItsSignOrNot() throws IOException {
        assertEquals(run("--pump-uncertainty", "20%").get("corals"), run("--pump-uncertainty", "20").get("corals"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--pump-uncertainty=61", "--pump-uncertainty=-5", "--pump-uncertainty=lots",
        "--pump-uncertainty=NaN", "--pump-uncertainty=%", "--pump-uncertainty=20%%", "--pump-uncertainty=0.2",
        "--grid-ratio=1", "--grid-ratio=3.1", "--grid-ratio=NaN", "--grid-ratio=twice"})
    void mistakesAreToldBeforeAnythingIsComputed(String option) {
        Path out = folder.resolve("out");
        Shell run = Shell.run("run", NANO, option, "--out", out);
        assertEquals(ExitCode.BAD_INPUT, run.code(), run.out());
        assertTrue(run.err().contains(option.substring(0, option.indexOf('='))), run.err());
        assertTrue(run.err().lines().count() <= 2, run.err());
        assertFalse(Files.exists(out), "nothing may be written");
    }

    @Test
    void aCompanionThatDoesNotFitIsNoReasonToGiveUp() throws ScenarioFaults {
        Scenario scenario = ScenarioReader.read(NANO);
        Companion unfit = Companion.of(scenario, 0.1, 1, setup -> {
            throw new UnfitGrid("no room for the pump: use smaller cells");
        });
        assertEquals(Optional.empty(), unfit.flow());
        assertTrue(unfit.remark().contains("cells of 10 cm") && unfit.remark().endsWith("."), unfit.remark());
        Companion away = Companion.of(scenario, 0.03, 1, setup -> new RunOutcome.Diverged(Vec3.ZERO, 1, "Move it."));
        assertEquals(Optional.empty(), away.flow());
        assertTrue(away.remark().contains("cells of 3 cm ran away"), away.remark());
    }

    @Test
    void nobodyWatchesAnyCoralInTheCompanion() throws ScenarioFaults {
        Scenario scenario = ScenarioReader.read(NANO);
        assertFalse(Setup.of(scenario, 0.03, 1).probes().isEmpty());
        List<Setup> handed = new ArrayList<>();
        Companion.of(scenario, 0.03, 1, setup -> {
            handed.add(setup);
            return new RunOutcome.Diverged(Vec3.ZERO, 1, "Move it.");
        });
        assertEquals(1, handed.size());
        assertEquals(List.of(), handed.get(0).probes());
    }

    @Test
    void aRunWhoseCompanionDoesNotFitSaysSo() throws IOException {
        JsonObject result = read(Shell.run("run", NANO, "--cell-cm", "3.4", "--grid-ratio", "3", "--max-seconds", "10",
                "--out", folder.resolve("out")));
        assertTrue(words(result).contains("There is nothing to compare with"), words(result));
    }

    private JsonObject run(String... options) throws IOException {
        Object[] words = new Object[options.length + 6];
        List<Object> first = List.of("run", NANO, "--cell-cm", "2", "--out", folder.resolve("out"));
        System.arraycopy(first.toArray(), 0, words, 0, 6);
        System.arraycopy(options, 0, words, 6, options.length);
        return read(Shell.run(words));
    }

    private JsonObject read(Shell run) throws IOException {
        assertEquals("", run.err());
        return JsonParser.parseString(Files.readString(folder.resolve("out/result.json"))).getAsJsonObject();
    }

    private static JsonObject coral(JsonObject result, int number) {
        return result.getAsJsonArray("corals").get(number).getAsJsonObject();
    }

    private static double width(JsonObject coral) {
        return coral.get("range_95_to_cm_per_s").getAsDouble() - coral.get("range_95_from_cm_per_s").getAsDouble();
    }

    private static String words(JsonObject result) {
        StringBuilder words = new StringBuilder();
        for (JsonElement sentence : result.getAsJsonObject("confidence").getAsJsonArray("sentences")) {
            words.append(sentence.getAsString()).append(' ');
        }
        return words.toString();
    }
}
