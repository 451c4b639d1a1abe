package slackwater.cli;

import java.util.function.Function;
import slackwater.simulation.RunOutcome;
import slackwater.simulation.RunOutcome.Diverged;

/** Starts a run that ran away anew with half the step: the same water at half the Mach number. */
final class Retry {
    private static final int MOST = 3;

    private Retry() {
    }

    /** What came of a set-up, or of the first of its slower ones that did not run away; of the slowest if all did. */
    static RunOutcome simulate(Setup setup, Function<Setup, RunOutcome> computation) {
        Setup tried = setup;
        RunOutcome outcome = computation.apply(tried);
        for (int n = 0; n < MOST && outcome instanceof Diverged; n++) {
            tried = tried.slower();
            outcome = computation.apply(tried);
        }
        return outcome;
    }
}
