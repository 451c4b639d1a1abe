package slackwater.cli;

import java.io.PrintWriter;
import java.util.Optional;
import slackwater.backend.Backend;
import slackwater.field.FlowObserver;
import slackwater.field.FlowRecord;
import slackwater.field.FlowRecorder;
import slackwater.simulation.Onlookers;
import slackwater.simulation.Progress;
import slackwater.simulation.RunLimits;
import slackwater.simulation.RunOutcome;
import slackwater.simulation.Simulator;

/** Runs set-ups, with a bar to watch on a terminal, and keeps a record of the water where it is wanted. */
final class Computation {
    private final PrintWriter out;
    private final Backend backend;
    private final RunLimits limits;
    private Optional<FlowRecorder> recorder = Optional.empty();

    Computation(PrintWriter out, Backend backend, RunLimits limits) {
        this.out = out;
        this.backend = backend;
        this.limits = limits;
    }

    /** Runs a set-up, and anew with shorter steps if it ran away. */
    RunOutcome run(Setup setup) {
        return Retry.simulate(setup, tried -> attempt(tried, FlowObserver.NONE));
    }

    /** The same, with its water recorded. */
    RunOutcome runRecorded(Setup setup) {
        return Retry.simulate(setup, tried -> {
            FlowRecorder fresh = new FlowRecorder(tried.voxels().grid(), tried.voxels().fluid(),
                    tried.discretisation().plan().batchS());
            recorder = Optional.of(fresh);
            return attempt(tried, fresh);
        });
    }

    /** The water of the last set-up that was recorded. */
    Optional<FlowRecord> record() {
        return recorder.flatMap(FlowRecorder::record);
    }

    private RunOutcome attempt(Setup setup, FlowObserver observer) {
        Thread farewell = new Thread(() -> out.println("\nStopped. Nothing was written."));
        Runtime.getRuntime().addShutdownHook(farewell);
        ProgressBar bar = new ProgressBar(out);
        try {
            return Simulator.simulate(setup.discretisation(), setup.probes(), limits, backend,
                    new Onlookers(Terminal.present() ? bar : Progress.SILENT, observer));
        } finally {
            bar.clear();
            Runtime.getRuntime().removeShutdownHook(farewell);
        }
    }
}
