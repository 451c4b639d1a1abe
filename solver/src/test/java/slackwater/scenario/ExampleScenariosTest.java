package slackwater.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tomlj.Toml;

class ExampleScenariosTest {
    static final Path FOLDER = Path.of("..", "scenarios");

    static List<Path> examples() throws Exception {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".toml")).sorted().toList();
        }
    }

    @Test
    void theExamplesAreThere() throws Exception {
        Set<String> names = examples().stream().map(file -> file.getFileName().toString()).collect(Collectors.toSet());
        assertTrue(names.containsAll(Set.of("terrace-120.toml", "nano-30.toml", "lagoon-150.toml",
                "peninsula-100.toml", "scanned-rock-90.toml")));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void itIsMarkedAsInvented(Path file) throws Exception {
        String text = Files.readString(file);
        assertTrue(text.startsWith("# Invented example"));
        assertTrue(text.contains("# What to notice"));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void writingAndReadingAgainGivesTheSame(Path file) throws Exception {
        Scenario read = ScenarioReader.read(file);
        String written = ScenarioWriter.write(read);
        Path copy = Files.createTempFile(FOLDER, "written", ".tmp");
        try {
            Files.writeString(copy, written);
            Scenario again = ScenarioReader.read(copy);
            assertEquals(read, again);
            assertEquals(written, ScenarioWriter.write(again));
        } finally {
            Files.delete(copy);
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void itConformsToTheEditorsSchema(Path file) throws Exception {
        ObjectMapper json = new ObjectMapper();
        var schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(ScenarioSchema.json());
        assertEquals(Set.of(), schema.validate(json.readTree(Toml.parse(file).toJson())));
        assertEquals(Set.of(), schema.validate(json.readTree(
                Toml.parse(ScenarioWriter.write(ScenarioReader.read(file))).toJson())));
    }

    @Test
    void theSchemaRefusesWhatTheReaderRefuses() throws Exception {
        ObjectMapper json = new ObjectMapper();
        var schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(ScenarioSchema.json());
        for (String spoilt : List.of("nmae = 1", "[tank]\ninside_cm = [1]", "[[pump]]\nflow_gph = 3\nflow_l_per_h = 3")) {
            assertTrue(!schema.validate(json.readTree(Toml.parse(spoilt).toJson())).isEmpty(), spoilt);
        }
    }
}
