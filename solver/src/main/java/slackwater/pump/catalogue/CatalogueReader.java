package slackwater.pump.catalogue;

import java.nio.file.Path;
import java.util.Optional;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.SourceText;
import slackwater.scenario.format.Document;
import slackwater.scenario.format.EditorSchema;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Faults;
import slackwater.scenario.format.FormatPage;

/** Reads catalogue files. The format is described in docs/placing.md. */
public final class CatalogueReader {
    private CatalogueReader() {
    }

    /**
     * Reads and checks one pump.
     *
     * @param file a TOML file of at most 1 MB in UTF-8
     * @throws ScenarioFaults with everything that is wrong with it, in the order of its lines
     */
    public static PumpModel read(Path file) throws ScenarioFaults {
        Faults faults = new Faults(String.valueOf(file.getFileName()));
        Optional<PumpModel> model = SourceText.of(file, "must have at least name, origin, flow, outlet, power, price"
                + " and body", faults).flatMap(text -> Document.parse(text, faults)).flatMap(CatalogueReader::model);
        if (!faults.isEmpty()) {
            throw new ScenarioFaults(faults.inOrder());
        }
        return model.orElseThrow();
    }

    private static Optional<PumpModel> model(Document document) {
        Entry entry = document.whole(ModelTable.FORMAT);
        ModelTable.check(entry);
        return entry.sound() ? Optional.of(ModelTable.read(entry)) : Optional.empty();
    }

    /** A JSON Schema (draft-07) of such files. It knows keys, types and ranges; the reader checks more. */
    public static String json() {
        return EditorSchema.of("Slackwater pump", ModelTable.FORMAT);
    }

    /** Tables of all keys in Markdown. */
    public static String markdown() {
        return FormatPage.of(ModelTable.FORMAT);
    }
}
