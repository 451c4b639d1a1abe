package slackwater.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The files in docs are what the declaration says. Run with -Dslackwater.write=true to write them anew. */
class ScenarioSchemaTest {
    private static final String MARK = "<!-- from here on: made from the declaration -->\n";
    private static final Path PAGE = Path.of("..", "docs", "scenario-format.md");
    private static final Path SCHEMA = Path.of("..", "docs", "scenario.schema.json");

    @Test
    void thePageIsUpToDate() throws Exception {
        String page = Files.readString(PAGE);
        String byHand = page.substring(0, page.indexOf(MARK) + MARK.length());
        String wanted = byHand + ScenarioSchema.markdown();
        if (Boolean.getBoolean("slackwater.write")) {
            Files.writeString(PAGE, wanted);
        }
        assertEquals(wanted, Files.readString(PAGE));
    }

    @Test
    void theEditorsSchemaIsUpToDate() throws Exception {
        if (Boolean.getBoolean("slackwater.write")) {
            Files.writeString(SCHEMA, ScenarioSchema.json());
        }
        assertEquals(ScenarioSchema.json(), Files.readString(SCHEMA));
    }
}
