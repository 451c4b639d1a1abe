package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.ForAll;
import slackwater.MadeUpTank;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Evidence;
import slackwater.field.FlowStatistics;
import slackwater.result.FlowResult;
import slackwater.result.UnreadableResult;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;

/** What a run wrote comes back: the field bit for bit, the readings to the eight digits that are written. */
class ResultFolderTest {
    private static final double DIGITS = 1e-7;
    private final Scenario scenario = MadeUpTank.scenario();
    private final FlowStatistics flow = MadeUpTank.flow(scenario, 0.02);
    private final FlowResult result = MadeUpTank.result(scenario, flow,
            new Evidence(Optional.of(MadeUpTank.flow(scenario, 0.04)), "", 0.2));

    @TempDir
    private Path folder;

    @BeforeEach
    void write() {
        Report.write(result, flow, folder);
    }

    @Test
    void theFieldComesBackBitForBit() throws UnreadableResult {
        ResultFolder read = ResultFolder.read(folder);
        FlowStatistics back = read.flow();
        assertEquals(flow.grid(), back.grid());
        assertArrayEquals(flow.fluid(), back.fluid());
        List<float[]> wanted = arrays(flow);
        for (int n = 0; n < wanted.size(); n++) {
            assertArrayEquals(wanted.get(n), arrays(back).get(n), 0, "array " + n);
        }
        assertArrayEquals(result.assessment().stillWater().probability(), read.stillProbability(), 0);
    }

    private static List<float[]> arrays(FlowStatistics flow) {
        return List.of(flow.meanU(), flow.meanV(), flow.meanW(), flow.meanSpeed(), flow.rmsSpeed(),
                flow.standardErrorSpeed(), flow.wallShear(), flow.rmsWallShear());
    }

    @Test
    void scenarioReadingsAndVerdictsComeBack() throws UnreadableResult, ScenarioFaults {
        ResultFolder read = ResultFolder.read(folder);
        assertEquals(result.provenance().scenarioText(), read.kept().scenarioText());
        assertEquals(ScenarioReader.read(result.provenance().scenarioText(), "written", folder),
                read.kept().scenario());
        assertEquals(result.assessment().summary(), read.kept().summary());
        assertEquals(result.assessment().verdict(), read.kept().verdict());
        assertEquals(result.quality().remark(), read.kept().quality().remark());
        assertEquals(scenario.corals().size(), read.kept().corals().size());
        for (int n = 0; n < scenario.corals().size(); n++) {
            CoralReading wanted = result.assessment().corals().get(n);
            CoralReading found = read.kept().corals().get(n);
            assertEquals(wanted.coral().name(), found.coral().name());
            assertEquals(wanted.verdict(), found.verdict());
            assertEquals(wanted.sentence(), found.sentence());
            assertEquals(wanted.range().source(), found.range().source());
            assertEquals(wanted.reading().meanMPerS(), found.reading().meanMPerS(), DIGITS);
            assertEquals(wanted.interval().lowMPerS(), found.interval().lowMPerS(), DIGITS);
            assertEquals(wanted.interval().highMPerS(), found.interval().highMPerS(), DIGITS);
        }
    }

    /** A field with deposits, as a run that follows grains writes it, put together from one without. */
    @Test
    void depositsComeByTheirNames() throws IOException, UnreadableResult {
        assertTrue(ResultFolder.read(folder).deposits().isEmpty());
        Path field = folder.resolve("flow.vti");
        Files.writeString(field, Files.readString(field).replace("\"rms_speed\"", "\"deposit_fine food_per_m2\""));
        assertThrows(UnreadableResult.class, () -> ResultFolder.read(folder), "an array is gone");
        Files.writeString(field, Files.readString(field).replaceFirst("(<DataArray Name=\")deposit_fine food_per_m2(\""
                + "[^>]*>)([^<]*)(</DataArray>)", "$1deposit_fine food_per_m2$2$3$4$1rms_speed$2$3$4"));
        assertArrayEquals(flow.rmsSpeed(), ResultFolder.read(folder).deposits().get("fine food"), 0);
    }

    @Test
    void saysWhatIsMissing() throws IOException {
        Files.delete(folder.resolve("flow.vti"));
        assertEquals(folder + ": has no flow.vti, must be the folder of a finished run; 'slackwater run' makes one",
                refused());
    }

    @Test
    void saysThatAnOlderVersionKeptNoScenario() throws IOException {
        Path json = folder.resolve("result.json");
        Files.writeString(json, Files.readString(json).replace("scenario_text", "scenario_words"));
        assertTrue(refused().contains("does not hold the text of its scenario"), refused());
    }

    @Test
    void neverTakesABrokenFileForAWholeOne() throws IOException {
        Path field = folder.resolve("flow.vti");
        byte[] whole = Files.readAllBytes(field);
        ForAll.seeds(12, random -> {
            write(field, Arrays.copyOf(whole, random.nextInt(whole.length - 60)));
            assertTrue(refused().contains("is no whole field"), refused());
        });
        String text = new String(whole, StandardCharsets.UTF_8);
        Files.writeString(field, text.replace("0 60 0 25 0 24", "0 60000 0 25000 0 24000"));
        assertTrue(refused().contains("is no whole field"), refused());
    }

    private static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
    }

    private String refused() {
        return assertThrows(UnreadableResult.class, () -> ResultFolder.read(folder)).getMessage();
    }
}
