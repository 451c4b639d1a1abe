package slackwater.search;

import java.nio.file.Path;
import java.util.Optional;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.SourceText;
import slackwater.scenario.format.Document;
import slackwater.scenario.format.EditorSchema;
import slackwater.scenario.format.Faults;
import slackwater.scenario.format.FormatPage;

/** Reads a file of wishes. The format is described in docs/placing.md. */
public final class WishesReader {
    private WishesReader() {
    }

    /**
     * Reads and checks the wishes.
     *
     * @param file a TOML file of at most 1 MB in UTF-8
     * @throws ScenarioFaults with everything that is wrong with it, in the order of its lines
     */
    public static Wishes read(Path file) throws ScenarioFaults {
        Faults faults = new Faults(String.valueOf(file.getFileName()));
        Optional<Wishes> wishes = SourceText.of(file, "must have [placing], [[show]] or [[keep_out]]", faults)
                .flatMap(text -> Document.parse(text, faults)).flatMap(WishesTables::read);
        if (!faults.isEmpty()) {
            throw new ScenarioFaults(faults.inOrder());
        }
        return wishes.orElseThrow();
    }

    /** A JSON Schema (draft-07) of such files. It knows keys, types and ranges; the reader checks more. */
    public static String json() {
        return EditorSchema.of("Slackwater wishes", WishesTables.WHOLE);
    }

    /** Tables of all keys in Markdown. */
    public static String markdown() {
        return FormatPage.of(WishesTables.WHOLE);
    }
}
