package slackwater.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import slackwater.backend.FlowSolver;
import slackwater.backend.Moments;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.TimePlan;
import slackwater.scenario.Scenario;
import slackwater.simulation.Simulator;

/**
 * What one trial costs, from a short try of the solver on the very grid.
 *
 * @param steps that it takes, with what comes on top of them counted in
 * @param stepS seconds a step
 * @param cells of the grid
 */
record TrialCost(double steps, double stepS, int cells) {
    private static final TrialCost NOTHING = new TrialCost(0, 0, 1);
    private static final double LONGEST_TRY_S = 4;
    private static final int STEPS = 600;
    private static final int LEAST_TRIES = 5;
    private static final int LONGEST_UNSEEN = 100;
    /** Statistics, readings and judging on top of the steps; measured once on small grids: a fifth to a third. */
    private static final double OTHER = 1.3;

    /** What a trial of this kind likely costs on this machine; nothing where nothing moves the water. */
    static TrialCost of(Scenario scenario, Fidelity fidelity, int threads) {
        if (!WaterTrial.anythingRuns(scenario)) {
            return NOTHING;
        }
        Discretisation discretisation = discretisation(scenario, fidelity);
        TimePlan plan = discretisation.plan();
        long[] range = Simulator.stepRange(plan, !fidelity.companion());
        double batchSteps = (double) plan.stepsPerSample() * plan.samplesPerBatch();
        double steps = Double.isInfinite(fidelity.turns()) ? (range[0] + range[1]) / 2.0
                : Math.min(range[1], batchSteps * (fidelity.turns() + 0.5));
        double companion = fidelity.companion() ? 1 + 1 / Math.pow(DoubtOptions.USUAL_RATIO, 4) : 1;
        return new TrialCost(OTHER * companion * steps, stepS(discretisation, threads),
                discretisation.problem().cells());
    }

    /**
     * The same, and no dearer for each cell than a smaller grid was: cells of large grids are the cheaper ones, so what
     * looks dearer was code that Java had not compiled yet.
     */
    TrialCost within(TrialCost smaller) {
        return new TrialCost(steps, Math.min(stepS, smaller.stepS() * cells / smaller.cells()), cells);
    }

    double seconds() {
        return steps * stepS;
    }

    private static Discretisation discretisation(Scenario scenario, Fidelity fidelity) {
        return Setup.of(scenario, fidelity.cellSizeM(), fidelity.seed()).discretisation();
    }

    /**
     * Seconds a step. Java compiles what each kind of grid needs while it is tried, so only the second half of the
     * tries counts; of these the median, since a machine with other work to do may stall one.
     */
    private static double stepS(Discretisation discretisation, int threads) {
        int unseen = Math.min(LONGEST_UNSEEN, discretisation.plan().stepsPerSample());
        List<Double> tries = new ArrayList<>();
        try (FlowSolver solver = new CpuBackend(threads).solver(discretisation.problem())) {
            Moments moments = new Moments(discretisation.problem().cells());
            double spentS = 0;
            while (tries.size() < LEAST_TRIES || tries.size() * unseen < STEPS && spentS < LONGEST_TRY_S) {
                long start = System.nanoTime();
                solver.advance(unseen);
                solver.read(moments);
                tries.add((System.nanoTime() - start) * 1e-9 / unseen);
                spentS += tries.get(tries.size() - 1) * unseen;
            }
        }
        List<Double> later = new ArrayList<>(tries.subList(tries.size() / 2, tries.size()));
        Collections.sort(later);
        return later.get(later.size() / 2);
    }
}
