package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.Wall;

class WishesReaderTest {
    private static final Path EXAMPLE = Path.of("..", "scenarios", "wishes", "terrace-120.toml");

    @TempDir
    private Path folder;

    private Wishes read(String text) throws Exception {
        Path file = folder.resolve("w.toml");
        Files.writeString(file, text);
        return WishesReader.read(file);
    }

    @Test
    void theExampleIsUnderstood() throws Exception {
        Wishes wishes = WishesReader.read(EXAMPLE);
        assertEquals(List.of(Wall.BACK, Wall.LEFT, Wall.RIGHT), wishes.panes());
        assertEquals(Optional.of(Wall.BACK), wishes.cablePane());
        assertEquals(1, wishes.keepOut().size());
    }

    @Test
    void whatIsLeftOutHasItsUsualValue() throws Exception {
        assertEquals(Wishes.NONE, read("[placing]\n"));
        assertEquals(List.of(Wall.FRONT, Wall.BACK), read("[[show]]\npane = \"left\"\n[[show]]\npane = \"right\"\n")
                .panes(), "with a pane to look through named, the front may carry pumps");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "[[show]] pane = \"top\"|w.toml:2 show[1].pane: found \"top\", must be \"front\", \"back\", \"left\"",
        "[placing] tariff_per_kwh = -1|tariff_per_kwh: found -1, must be at least 0",
        "[placing] cabel_pane = \"back\"|unknown key, did you mean cable_pane?",
        "[[keep_out]] min_cm = [0, 0, 9] max_cm = [9, 9, 9]|max_cm: found [9, 9, 9] cm, must be above min",
        "[wishes]|wishes: unknown key, known here are placing, show, keep_out"})
    void everyFaultIsTold(String text, String expected) {
        String lines = text.replaceFirst("] ", "]\n").replace("] max", "]\nmax");
        ScenarioFaults faults = assertThrows(ScenarioFaults.class, () -> read(lines));
        assertTrue(faults.getMessage().contains(expected), faults.getMessage());
    }

    @Test
    void everyPaneToLookThroughIsOneTooMany() {
        String all = "[[show]]\npane = \"front\"\n[[show]]\npane = \"back\"\n[[show]]\npane = \"left\"\n[[show]]\n"
                + "pane = \"right\"\n";
        assertTrue(assertThrows(ScenarioFaults.class, () -> read(all)).getMessage().contains("must leave one"));
    }

    /** Run with -Dslackwater.write=true to write the tables of the page anew. */
    @Test
    void thePageHasTheKeysOfTheFormat() throws IOException {
        PlacingPage.compare(Path.of("..", "docs", "placing.md"), "wishes", WishesReader.markdown());
    }
}
