package slackwater.cli;

import slackwater.backend.FlowSolver;
import slackwater.backend.Moments;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.scenario.Scenario;

/**
 * What one trial costs, from a short try of the solver on the very grid.
 *
 * @param steps that it takes, with what comes on top of them counted in
 * @param stepS seconds a step
 * @param cells of the grid
 */
record TrialCost(double steps, double stepS, int cells) {
    private static final TrialCost NOTHING = new TrialCost(0, 0, 1);
    private static final double LEAST_TRY_S = 2;
    private static final double LONGEST_TRY_S = 15;
    /** Compiled code does millions of cells a second; below this Java has not come to compile it yet. */
    private static final double SLOWEST_CELLS_PER_S = 2e5;
    private static final int LEAST_TRIES = 5;
    private static final int LONGEST_UNSEEN = 100;
    /** A try that takes less than this share of the best one before shows that code has been compiled meanwhile. */
    private static final double GAIN_FRACTION = 0.8;
    /** Statistics, readings and judging on top of the steps; measured once on small grids: a fifth to a third. */
    private static final double OTHER = 1.3;

    /** What a trial of this kind likely costs on this machine; nothing where nothing moves the water. */
    static TrialCost of(Scenario scenario, Fidelity fidelity, int threads) {
        if (!WaterTrial.anythingRuns(scenario)) {
            return NOTHING;
        }
        Discretisation discretisation = discretisation(scenario, fidelity);
        double[] steps = fidelity.companion()
                ? Cost.steps(discretisation.plan(), DoubtOptions.USUAL_RATIO, fidelity.turns())
                : Cost.steps(discretisation.plan(), true, fidelity.turns());
        double likely = Double.isInfinite(fidelity.turns()) ? (steps[0] + steps[1]) / 2 : steps[1];
        return new TrialCost(OTHER * likely, stepS(discretisation, threads), discretisation.problem().cells());
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
     * Seconds a step. Java compiles what each kind of grid needs while it is tried, on a busy machine late, and is
     * slower by orders of magnitude before; so tries go on until for half of the time none was much better than those
     * before. Of these the mean counts, without the longest: other work on the machine stalls trials as often as it
     * stalls tries, but one long pause is chance.
     */
    private static double stepS(Discretisation discretisation, int threads) {
        int unseen = Math.min(LONGEST_UNSEEN, discretisation.plan().stepsPerSample());
        double slowestS = discretisation.problem().cells() / SLOWEST_CELLS_PER_S;
        try (FlowSolver solver = new CpuBackend(threads).solver(discretisation.problem())) {
            Moments moments = new Moments(discretisation.problem().cells());
            double spentS = 0;
            double gainedS = 0;
            double best = Double.POSITIVE_INFINITY;
            double worst = 0;
            int tries = 0;
            while (tries < LEAST_TRIES || spentS < Math.max(LEAST_TRY_S, 2 * gainedS) && spentS < LONGEST_TRY_S
                    || best > slowestS && spentS < LONGEST_TRY_S) {
                long start = System.nanoTime();
                solver.advance(unseen);
                solver.read(moments);
                double tried = (System.nanoTime() - start) * 1e-9 / unseen;
                if (tried < GAIN_FRACTION * best) {
                    best = tried;
                    gainedS = spentS;
                    worst = 0;
                    tries = 0;
                }
                spentS += tried * unseen;
                worst = Math.max(worst, tried);
                tries++;
            }
            return ((spentS - gainedS) / unseen - worst) / (tries - 1);
        }
    }
}
