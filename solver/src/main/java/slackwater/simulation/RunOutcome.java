package slackwater.simulation;

import java.util.List;
import slackwater.field.FlowStatistics;
import slackwater.field.ProbeSeries;
import slackwater.field.RunQuality;
import slackwater.field.Velocity;
import slackwater.geometry.Vec3;

/** How a run ended. */
public sealed interface RunOutcome {
    /** It ended with averages, settled or not. */
    sealed interface Averaged extends RunOutcome {
        FlowStatistics statistics();

        List<ProbeSeries> series();

        RunQuality quality();

        /** The water at the end, for another run to begin with. */
        Velocity ending();
    }

    /** The readings stopped changing. */
    record Completed(FlowStatistics statistics, List<ProbeSeries> series, RunQuality quality, Velocity ending)
            implements Averaged {
    }

    /** The limit came first; the quality says what was still moving. */
    record NotSettled(FlowStatistics statistics, List<ProbeSeries> series, RunQuality quality, Velocity ending)
            implements Averaged {
    }

    /**
     * The numbers ran away.
     *
     * @param atM where, metres
     * @param waterTimeS when, in water time
     * @param advice what to do about it
     */
    record Diverged(Vec3 atM, double waterTimeS, String advice) implements RunOutcome {
    }
}
