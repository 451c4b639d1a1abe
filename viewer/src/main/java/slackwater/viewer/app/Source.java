package slackwater.viewer.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slackwater.cli.BadInput;
import slackwater.report.ResultFolder;
import slackwater.result.UnreadableResult;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.Water;

/** What a command was pointed at: a scenario file, or the folder of a finished run. */
final class Source {
    private Source() {
    }

    /**
     * Reads it.
     *
     * @throws ScenarioFaults where it is a scenario with faults
     * @throws BadInput where it is the folder of a run that cannot be read back
     */
    static Scene read(Path path) throws ScenarioFaults {
        if (!Files.isDirectory(path)) {
            return Scene.of(ScenarioReader.read(path));
        }
        try {
            ResultFolder result = ResultFolder.read(path);
            Water water = new Water(result.flow(), result.stillProbability(), result.deposits(),
                    result.kept().quality().settled());
            return new Scene(result.kept().scenario(), Optional.of(water), result.kept().corals());
        } catch (UnreadableResult unread) {
            throw new BadInput(unread.getMessage());
        }
    }
}
