package slackwater.cli;

import slackwater.scenario.Scenario;
import slackwater.search.Anchor;
import slackwater.search.Outcome;
import slackwater.search.Runs;
import slackwater.search.Stage;
import slackwater.search.TrialLog;
import slackwater.search.Trials;

/**
 * The runs of a search, ready to be made.
 *
 * @param screenFactor what every speed on large cells is multiplied with
 * @param siftFactor the same for the cells of the sift
 */
record Stages(Runs runs, double screenFactor, double siftFactor) {
    private record Bench(Fidelities fidelities, TrialLog log, TrialLine line) {
        Trials trials(Stage stage, Fidelity fidelity) {
            return new Trials(stage, fidelity.words(), new WaterTrial(fidelity, fidelities.threads()), log, line)
                    .recalling(line::recall);
        }

        Runs runs(double screenFactor, double siftFactor) {
            return new Runs(trials(Stage.SCREEN, fidelities.screen(screenFactor)),
                    trials(Stage.SIFT, fidelities.sift(siftFactor)), trials(Stage.CONFIRM, fidelities.confirm()),
                    trials(Stage.HOLD, fidelities.sift(1)));
        }
    }

    /**
     * The stages of a search. Where the tank's own layout can be run it is, on all three grids: the ratios to the fine
     * one are the factors.
     */
    static Stages of(Scenario scenario, Fidelities fidelities, TrialLog log, TrialLine line) {
        Bench bench = new Bench(fidelities, log, line);
        if (!WaterTrial.anythingRuns(scenario) || scenario.corals().isEmpty()) {
            return new Stages(bench.runs(1, 1), 1, 1);
        }
        Runs plain = bench.runs(1, 1);
        Outcome fine = plain.confirm().of(scenario).outcome();
        double screen = Anchor.factor(plain.screen().of(scenario).outcome(), fine);
        double sift = Anchor.factor(plain.hold().of(scenario).outcome(), fine);
        return new Stages(bench.runs(screen, sift), screen, sift);
    }

    /** The same with another line for each trial. */
    Stages watched(Fidelities fidelities, TrialLog log, TrialLine line) {
        return new Stages(new Bench(fidelities, log, line).runs(screenFactor, siftFactor), screenFactor, siftFactor);
    }
}
