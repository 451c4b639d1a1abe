package slackwater.cli;

import java.util.List;
import slackwater.pump.catalogue.PumpModel;
import slackwater.scenario.Scenario;
import slackwater.search.Piece;
import slackwater.search.PumpSet;
import slackwater.search.Task;

/** The pumps that a search is to place. */
final class Pieces {
    private static final int MOST = 12;

    private Pieces() {
    }

    /** One for each model, numbered where there are several; the scenario's own where there is no model. */
    static List<Piece> of(Scenario scenario, List<PumpModel> models) {
        if (models.isEmpty()) {
            return scenario.pumps().stream().map(Piece::of).toList();
        }
        return new PumpSet(models).pieces();
    }

    /** @throws BadInput if there is nothing to place or nothing to place it for */
    static void require(Task task) {
        if (task.pieces().isEmpty()) {
            throw new BadInput("the scenario has no pump to place: add a [[pump]], or take some of the catalogue with"
                    + " --pumps");
        }
        if (task.pieces().size() > MOST) {
            throw new BadInput("found " + task.pieces().size() + " pumps to place, must be at most " + MOST);
        }
        if (task.scenario().corals().isEmpty()) {
            throw new BadInput("the scenario has no coral to place the pumps for: add a [[coral]]");
        }
    }
}
