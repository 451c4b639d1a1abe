package slackwater.cli;

import java.util.function.Consumer;
import slackwater.scenario.Scenario;
import slackwater.search.Anchor;
import slackwater.search.Outcome;
import slackwater.search.Stage;
import slackwater.search.Trial;
import slackwater.search.TrialLog;
import slackwater.search.Trials;

/**
 * The three ways in which a search computes its trials.
 *
 * @param screen on large cells, short, every speed times the factor
 * @param confirm on fine cells until the readings have settled, with a companion for the doubt
 * @param hold on cells twice as large as those, short
 * @param factor what brings the large cells' speeds up to those of the fine ones
 */
record Stages(Trials screen, Trials confirm, Trials hold, double factor) {
    static final double HOLD_RATIO = 2;

    /**
     * The stages of a search. Where the tank's own layout can be run it is, on large cells and on fine ones: their
     * ratio is the factor.
     *
     * @param anchored whether to do so; else the factor is 1
     */
    static Stages of(Scenario scenario, Fidelities fidelities, boolean anchored, TrialLog log,
                     Consumer<Trial> watcher) {
        Trials confirm = trials(Stage.CONFIRM, fidelities.confirm(), fidelities.threads(), log, watcher);
        Trials hold = trials(Stage.HOLD, fidelities.hold(), fidelities.threads(), log, watcher);
        double factor = 1;
        if (anchored && WaterTrial.anythingRuns(scenario) && !scenario.corals().isEmpty()) {
            Outcome coarse = trials(Stage.SCREEN, fidelities.screen(1), fidelities.threads(), log, watcher)
                    .of(scenario).outcome();
            factor = Anchor.factor(coarse, confirm.of(scenario).outcome());
        }
        return new Stages(trials(Stage.SCREEN, fidelities.screen(factor), fidelities.threads(), log, watcher), confirm,
                hold, factor);
    }

    /** The stages with a factor that is known already. */
    static Stages at(double factor, Fidelities fidelities, TrialLog log, Consumer<Trial> watcher) {
        return new Stages(trials(Stage.SCREEN, fidelities.screen(factor), fidelities.threads(), log, watcher),
                trials(Stage.CONFIRM, fidelities.confirm(), fidelities.threads(), log, watcher),
                trials(Stage.HOLD, fidelities.hold(), fidelities.threads(), log, watcher), factor);
    }

    private static Trials trials(Stage stage, Fidelity fidelity, int threads, TrialLog log, Consumer<Trial> watcher) {
        return new Trials(stage, fidelity.words(), new WaterTrial(fidelity, threads), log, watcher);
    }
}
