package slackwater.viewer.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.scenario.ScenarioWriter;

/**
 * A layout that has not been saved, kept in a hidden file beside the scenario for as long as the window is open: if the
 * screen or the power goes, it is still there. Where nothing can be written, there is none.
 *
 * @param file of the draft
 */
record Draft(Path file) {
    /** @param copy 1, or more where the same file is open more than once in one window */
    static Draft beside(Path scenario, int copy) {
        return new Draft(scenario.resolveSibling("." + scenario.getFileName() + (copy > 1 ? "." + copy : "")
                + ".draft"));
    }

    /** Written beside it first, so that at no time there is half a draft. */

    void keep(Scenario layout) {
        Path fresh = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.writeString(fresh, ScenarioWriter.write(layout));
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException unwritten) {
            // A draft is a favour; a folder that takes none is told of when the layout is to be saved.
            delete(fresh);
        }
    }

    void remove() {
        delete(file);
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException kept) {
            // It would be offered once more, and can be declined.
        }
    }

    /** The layout that was left behind; empty where there is none, or none that can stand. */
    Optional<Scenario> read() {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(ScenarioReader.read(file));
        } catch (ScenarioFaults broken) {
            return Optional.empty();
        }
    }
}
