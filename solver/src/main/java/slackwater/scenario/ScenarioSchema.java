package slackwater.scenario;

import slackwater.scenario.format.EditorSchema;
import slackwater.scenario.format.FormatPage;

/** The format for others to use: as a schema for editors and as a page for people. */
public final class ScenarioSchema {
    private ScenarioSchema() {
    }

    /** A JSON Schema (draft-07) of scenario files. It knows keys, types and ranges; the reader checks much more. */
    public static String json() {
        return EditorSchema.of("Slackwater scenario", ScenarioFormat.WHOLE);
    }

    /** Tables of all keys in Markdown. */
    public static String markdown() {
        return FormatPage.of(ScenarioFormat.WHOLE);
    }
}
