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
        Scenario again = ScenarioReader.read(written, "written.toml", FOLDER);
        assertEquals(read, again);
        assertEquals(written, ScenarioWriter.write(again));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyCoralSitsOnSomething(Path file) throws Exception {
        Scenario scenario = ScenarioReader.read(file);
        for (Coral coral : scenario.corals()) {
            double rock = scenario.rocks().stream()
                    .mapToDouble(one -> Math.abs(one.solid().signedDistanceM(coral.atM()))).min().orElseThrow();
            double sand = Math.abs(coral.atM().z() - scenario.tank().sandDepthM());
            assertTrue(Math.min(rock, sand) < 0.012, () -> coral.name() + " is " + rock + " from the rock");
        }
    }

    /** 12 inches are 30.48 cm: a cube given in inches is the same cube. */
    @Test
    void theNanoCubeIsMeasuredInInches() throws Exception {
        Tank tank = ScenarioReader.read(FOLDER.resolve("nano-30.toml")).tank();
        assertEquals(0.3048, tank.insideM().x());
        assertEquals(0.2794, tank.waterLevelM());
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
        for (String spoilt : List.of("nmae = 1", "[tank]\ninside_cm = [1]",
                "[[pump]]\nflow_gph = 3\nflow_l_per_h = 3")) {
            assertTrue(!schema.validate(json.readTree(Toml.parse(spoilt).toJson())).isEmpty(), spoilt);
        }
    }
}
