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
    private static final double LONGEST_TRY_S = 4;
    private static final int WARM_UP_STEPS = 1500;
    private static final int LEAST_STEPS = 40;
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
        Discretisation discretisation = discretisation(scenario, fidelity);
        TimePlan plan = discretisation.plan();
        long[] range = Simulator.stepRange(plan);
        double batchSteps = (double) plan.stepsPerSample() * plan.samplesPerBatch();
        double steps = Double.isInfinite(fidelity.turns()) ? (range[0] + range[1]) / 2.0
                : Math.min(range[1], batchSteps * (fidelity.turns() + 0.5));
        double companion = fidelity.companion() ? 1 + 1 / Math.pow(DoubtOptions.USUAL_RATIO, 4) : 1;
        return OTHER * companion * steps * stepS(discretisation, threads, LEAST_STEPS);
    }

    /** Lets Java compile the solver, so that the first measurement is not of slow code. */
    static void warmUp(Scenario scenario, Fidelity fidelity, int threads) {
        if (WaterTrial.anythingRuns(scenario)) {
            stepS(discretisation(scenario, fidelity), threads, WARM_UP_STEPS);
        }
    }

    private static Discretisation discretisation(Scenario scenario, Fidelity fidelity) {
        return Setup.of(scenario, fidelity.cellSizeM(), fidelity.seed()).discretisation();
    }

    /** Seconds a step, over a quarter of a second and so many steps at least, but no longer than a few seconds. */
    private static double stepS(Discretisation discretisation, int threads, int leastSteps) {
        int unseen = Math.min(LONGEST_UNSEEN, discretisation.plan().stepsPerSample());
        try (FlowSolver solver = new CpuBackend(threads).solver(discretisation.problem())) {
            Moments moments = new Moments(discretisation.problem().cells());
            solver.advance(unseen);
            long start = System.nanoTime();
            long steps = 0;
            double spentS = 0;
            while (spentS < TRY_S || steps < leastSteps && spentS < LONGEST_TRY_S) {
                solver.advance(unseen);
                solver.read(moments);
                steps += unseen;
                spentS = (System.nanoTime() - start) * 1e-9;
            }
            return spentS / steps;
        }
    }
}
