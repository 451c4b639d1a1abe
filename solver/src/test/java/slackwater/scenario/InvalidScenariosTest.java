package slackwater.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.scenario.format.Fault;

/** Every file under scenarios/invalid against the words expected of it, which stand beside it. */
class InvalidScenariosTest {
    private static final Path FOLDER = ExampleScenariosTest.FOLDER.resolve("invalid");

    static List<Path> spoilt() throws Exception {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".toml")).sorted().toList();
        }
    }

    /** Run with -Dslackwater.write=true to write the expected words anew, then read every one of them. */
    @ParameterizedTest
    @MethodSource("spoilt")
    void everyFaultIsToldAtOnce(Path file) throws Exception {
        String told = told(file);
        Path expected = FOLDER.resolve(file.getFileName().toString().replace(".toml", ".expected"));
        if (Boolean.getBoolean("slackwater.write")) {
            Files.writeString(expected, told);
        }
        assertEquals(Files.readString(expected), told);
    }

    @Test
    void thereAreAtLeastThirty() throws Exception {
        assertTrue(spoilt().size() >= 30);
    }

    @Test
    void hugeFilesAndFoldersAreRefused(@TempDir Path folder) throws Exception {
        Path huge = folder.resolve("huge.toml");
        Files.writeString(huge, "# a comment without end\n".repeat(90_000));
        assertEquals("huge.toml: has more than 1 MB, must be a plain scenario file\n", told(huge));
        assertEquals("none.toml: is missing; check its name\n", told(folder.resolve("none.toml")));
        Files.createDirectory(folder.resolve("folder.toml"));
        assertEquals("folder.toml: is not a file, must be a .toml file\n", told(folder.resolve("folder.toml")));
    }

    /** A file cut off anywhere is either still a scenario or told to be none: it never fails in another way. */
    @Test
    void cutOffAnywhereItIsReadOrRefused(@TempDir Path folder) throws Exception {
        byte[] whole = Files.readAllBytes(ExampleScenariosTest.FOLDER.resolve("terrace-120.toml"));
        Path cut = folder.resolve("cut.toml");
        for (int length = 0; length < whole.length; length += 7) {
            Files.write(cut, Arrays.copyOf(whole, length));
            try {
                ScenarioReader.read(cut);
            } catch (ScenarioFaults faults) {
                assertTrue(!faults.faults().isEmpty());
            }
        }
    }

    private static String told(Path file) {
        ScenarioFaults faults = assertThrows(ScenarioFaults.class, () -> ScenarioReader.read(file));
        return faults.faults().stream().map(Fault::toString).collect(Collectors.joining("\n", "", "\n"));
    }
}
