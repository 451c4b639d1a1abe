package slackwater.cli;

import java.util.Optional;
import java.util.function.Function;
import slackwater.analysis.Figures;
import slackwater.field.FlowStatistics;
import slackwater.field.UnfitGrid;
import slackwater.field.Velocity;
import slackwater.scenario.Scenario;
import slackwater.simulation.RunOutcome;

/**
 * The same tank on larger cells, to see how much the cells matter.
 *
 * @param flow what it came to; empty if there is nothing to compare
 * @param ending its water at the end, for the finer cells to begin with
 * @param remark one sentence where there is something to say; may be empty
 */
record Companion(Optional<FlowStatistics> flow, Optional<Velocity> ending, String remark) {
    /** Where nobody asks how much the cells matter. */
    static final Companion NONE = new Companion(Optional.empty(), Optional.empty(), "");
    static final Companion LEFT_OUT = new Companion(Optional.empty(), Optional.empty(),
            "The comparison with larger cells was left out as asked for (--one-grid).");

    /**
     * Computes it; what goes wrong on the larger cells is no reason to give up the finer ones. No coral is watched
     * there, so it averages no longer than it must: of what differs, the doubt takes off what chance alone explains.
     */
    static Companion of(Scenario scenario, double cellSizeM, long seed, Function<Setup, RunOutcome> computation) {
        String cells = "cells of " + Figures.cell(cellSizeM);
        try {
            return of(computation.apply(Setup.of(scenario, cellSizeM, seed).unwatched()), cells);
        } catch (UnfitGrid unfit) {
            return new Companion(Optional.empty(), Optional.empty(), "There is nothing to compare with, since the tank"
                    + " does not fit " + cells + "; a smaller --grid-ratio may do.");
        }
    }

    private static Companion of(RunOutcome outcome, String cells) {
        if (!(outcome instanceof RunOutcome.Averaged averaged)) {
            return new Companion(Optional.empty(), Optional.empty(), "There is nothing to compare with, since the"
                    + " computation on " + cells + " ran away.");
        }
        return new Companion(Optional.of(averaged.statistics()), Optional.of(averaged.ending()),
                averaged.quality().settled() ? ""
                : "The computation on " + cells + " had not settled, so what the cells do is itself uncertain.");
    }
}
