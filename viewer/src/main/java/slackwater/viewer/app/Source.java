package slackwater.viewer.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slackwater.cli.BadInput;
import slackwater.report.ResultFolder;
import slackwater.result.UnreadableResult;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.viewer.scene.Crumbs;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.Seats;
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
            Water water = new Water(result.flow(), result.stillProbability(), result.deposits(), crumbs(result),
                    result.kept().quality().settled());
            return new Scene(result.kept().scenario(), Optional.of(water), result.kept().corals());
        } catch (UnreadableResult unread) {
            throw new BadInput(unread.getMessage());
        }
    }

    /** The grains that were let go in the tank: their releases come last, in the order of the deposits. */
    private static List<Crumbs> crumbs(ResultFolder result) {
        if (result.grains().isEmpty()) {
            return List.of();
        }
        slackwater.detritus.Scene end = result.grains().get();
        Seats seats = new Seats(result.kept().scenario(), result.flow().grid().cellSizeM());
        List<String> kinds = List.copyOf(result.deposits().keySet());
        int last = IntStream.range(0, end.grains()).map(n -> end.group()[n]).max().orElse(-1);
        int first = last + 1 - kinds.size();
        return IntStream.range(Math.max(0, -first), kinds.size())
                .mapToObj(n -> Crumbs.of(kinds.get(n), end, first + n, seats))
                .filter(crumbs -> crumbs.all() > 0).toList();
    }
}
