package slackwater.cli;

import slackwater.backend.FlowSolver;
import slackwater.backend.Moments;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.TimePlan;
import slackwater.scenario.Scenario;
import slackwater.simulation.Simulator;

/** What one trial costs, from a short try of the solver on the very grid. */
final class TrialCost {
    private static final double TRY_S = 0.25;
    private static final int WARM_UP_STEPS = 60;
    private static final int WARM_UPS = 3;
    private static final int LONGEST_UNSEEN = 100;
    /** Statistics, readings and judging on top of the steps; measured once on small grids: a fifth to a third. */
    private static final double OTHER = 1.3;

    private TrialCost() {
    }

    /** Seconds that a trial of this kind likely takes on this machine; 0 where nothing moves the water. */
    static double seconds(Scenario scenario, Fidelity fidelity, int threads) {
        if (!WaterTrial.anythingRuns(scenario)) {
            return 0;
        }
        Discretisation discretisation = Setup.of(scenario, fidelity.cellSizeM(), fidelity.seed()).discretisation();
        TimePlan plan = discretisation.plan();
        long[] range = Simulator.stepRange(plan);
        double batchSteps = (double) plan.stepsPerSample() * plan.samplesPerBatch();
        double steps = Double.isInfinite(fidelity.turns()) ? (range[0] + range[1]) / 2.0
                : Math.min(range[1], batchSteps * (fidelity.turns() + 0.5));
        double companion = fidelity.companion() ? 1 + 1 / Math.pow(DoubtOptions.USUAL_RATIO, 4) : 1;
        return OTHER * companion * steps * stepS(discretisation, threads);
    }

    /** Lets Java compile the solver, so that the first measurement is not of slow code. */
    static void warmUp(Scenario scenario, Fidelity fidelity, int threads) {
        for (int n = 0; n < WARM_UPS; n++) {
            seconds(scenario, fidelity, threads);
        }
    }

    private static double stepS(Discretisation discretisation, int threads) {
        int unseen = Math.min(LONGEST_UNSEEN, discretisation.plan().stepsPerSample());
        try (FlowSolver solver = new CpuBackend(threads).solver(discretisation.problem())) {
            Moments moments = new Moments(discretisation.problem().cells());
            solver.advance(WARM_UP_STEPS);
            long start = System.nanoTime();
            long steps = 0;
            while ((System.nanoTime() - start) * 1e-9 < TRY_S) {
                solver.advance(unseen);
                solver.read(moments);
                steps += unseen;
            }
            return (System.nanoTime() - start) * 1e-9 / steps;
        }
    }
}
