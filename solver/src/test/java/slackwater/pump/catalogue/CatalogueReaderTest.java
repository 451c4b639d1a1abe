package slackwater.pump.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tomlj.Toml;
import slackwater.scenario.ScenarioFaults;
import slackwater.search.PlacingPage;

class CatalogueReaderTest {
    private static final Path FOLDER = Path.of("..", "scenarios", "pumps");
    private static final Path PAGE = Path.of("..", "docs", "placing.md");

    @TempDir
    private Path folder;

    static List<Path> pumps() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("pumps")
    void everyPumpIsReadAndMarkedInvented(Path file) throws Exception {
        PumpModel model = CatalogueReader.read(file);
        assertTrue(model.origin().startsWith("invented"), model.origin());
        assertTrue(Files.readString(file).startsWith("# Invented"), "the file says so at its top");
        assertTrue(model.flowM3PerS() < model.makersFlowM3PerS(), "the maker's figure is not taken at its word");
        assertEquals(model.powerW().getAsDouble() / 8, model.powerW(0.5).getAsDouble(), 1e-12, "the cube law");
    }

    @Test
    void allClassesAreThere() throws Exception {
        assertEquals(List.of("large-propeller.toml", "mid-propeller.toml", "small-nozzle.toml", "wide-cross-flow.toml"),
                pumps().stream().map(file -> file.getFileName().toString()).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "flow_l_per_h = 6000|flow_l_per_h = 0|:4 flow_l_per_h: found 0, must be above 0 (typical 500 to 20000)",
        "outlet_mm = 55||outlet_mm: missing, give outlet_mm or outlet_in",
        "price = 110|price = \"cheap\"|:10 price: found \"cheap\", must be a number without quotes",
        "power_w = 14|power_kw = 0.014|:9 power_kw: unknown key, did you mean power_w?",
        "least_depth_cm = 8|least_depth_cm = 200|greatest_depth_cm: found 200 cm, must be above least_depth at 200 cm",
        "delivered_percent = 80|delivered_percent = 10|must be at least 20 (typical 70 to 100)"})
    void everyFaultIsOneLineThatSaysWhatToDo(String right, String wrong, String expected) throws IOException {
        String text = Files.readString(FOLDER.resolve("mid-propeller.toml"));
        assertTrue(text.contains(right), right);
        Path file = folder.resolve("pump.toml");
        Files.writeString(file, text.replace(right, wrong == null ? "" : wrong));
        ScenarioFaults faults = assertThrows(ScenarioFaults.class, () -> CatalogueReader.read(file));
        assertEquals(1, faults.faults().size(), faults.getMessage());
        assertTrue(faults.getMessage().contains(expected), faults.getMessage());
    }

    @Test
    void aFileThatIsNotThereIsTold() {
        ScenarioFaults faults = assertThrows(ScenarioFaults.class,
                () -> CatalogueReader.read(folder.resolve("no.toml")));
        assertEquals("no.toml: is missing; check its name", faults.getMessage());
    }

    /** The editors' schema accepts every pump that the reader accepts, by another reader of schemas. */
    @ParameterizedTest
    @MethodSource("pumps")
    void theEditorsSchemaKnowsEveryPump(Path file) throws Exception {
        var schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(CatalogueReader.json());
        assertEquals(Set.of(), schema.validate(Toml.parse(file).toJson(), InputFormat.JSON));
    }

    /** Run with -Dslackwater.write=true to write the tables of the page anew. */
    @Test
    void thePageHasTheKeysOfTheFormat() throws IOException {
        PlacingPage.compare(PAGE, "catalogue", CatalogueReader.markdown());
    }
}
