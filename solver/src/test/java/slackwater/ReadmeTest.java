package slackwater;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slackwater.report.Cautions;
import slackwater.scenario.ScenarioReader;

/** What the README shows is what the program takes and says. */
class ReadmeTest {
    private static final Path PAGE = Path.of("..", "README.md");
    private static final Pattern EXAMPLE = Pattern.compile("```toml\\R(.+?)```", Pattern.DOTALL);
    private static final Pattern LINK = Pattern.compile("]\\(([^)#]+\\.md)(#[^)]*)?\\)");

    @Test
    void everyExampleIsAScenario() throws IOException {
        List<String> examples = matches(EXAMPLE);
        assertEquals(1, examples.size());
        assertDoesNotThrow(() -> ScenarioReader.read(examples.get(0), "README.md", Path.of("..", "scenarios")));
    }

    @Test
    void givesTheCautionsOfTheReportWordForWord() throws IOException {
        String words = Files.readString(PAGE).replaceAll("\\s+", " ");
        assertEquals(List.of(), Cautions.all().stream().filter(caution -> !words.contains("- " + caution)).toList());
    }

    @Test
    void everyPageItLeadsToIsThere() throws IOException {
        List<String> pages = matches(LINK);
        assertTrue(pages.size() >= 3, "found only " + pages);
        assertEquals(List.of(), pages.stream().filter(page -> !Files.exists(PAGE.resolveSibling(page))).toList());
    }

    private static List<String> matches(Pattern pattern) throws IOException {
        return pattern.matcher(Files.readString(PAGE)).results().map((MatchResult found) -> found.group(1)).toList();
    }
}
