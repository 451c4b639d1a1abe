package slackwater.viewer.live;

import java.util.List;
import slackwater.backend.FlowSolver;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.field.UnfitGrid;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.scenario.Scenario;

/** Chooses cells so large that the water keeps up with the clock. */
public final class Liveliness {
    /** No finer: these are for watching, and a run is there for a verdict. */
    private static final double[] SIZES_CM = {1, 1.25, 1.5, 2, 2.5, 3, 4, 5};
    /**
     * Water seconds in a second of the clock by the trial: a tank with its walls goes about half as fast as the trial's
     * plain box, and slower than half the clock looks dead.
     */
    private static final double LEAST_PACE = 1;
    private static final int EDGE = 48;
    private static final int WARM_UP = 60;
    private static final int STEPS = 40;

    private Liveliness() {
    }

    /**
     * The finest cells on which this machine keeps up, metres, or the coarsest ones on which the tank fits.
     *
     * @param cellsPerS cell updates a second, from {@link #cellsPerS}
     */
    public static double cellSizeM(Scenario scenario, double cellsPerS) {
        double fits = SIZES_CM[0] / 100;
        boolean any = false;
        for (double cm : SIZES_CM) {
            try {
                double pace = pace(scenario, cm / 100, cellsPerS);
                fits = cm / 100;
                any = true;
                if (pace >= LEAST_PACE) {
                    return fits;
                }
            } catch (UnfitGrid tooCoarse) {
                if (any) {
                    return fits;
                }
            }
        }
        return fits;
    }

    private static double pace(Scenario scenario, double cellSizeM, double cellsPerS) {
        Voxels voxels = Voxels.of(scenario.tank(), scenario.rocks(), cellSizeM);
        Discretisation set = Discretiser.discretise(scenario, voxels, 1);
        return cellsPerS / voxels.solid().length * set.plan().timeStepS();
    }

    /** A short trial of the solver on this machine. */
    public static double cellsPerS(int threads) {
        int cells = EDGE * EDGE * EDGE;
        LatticeProblem trial = new LatticeProblem(EDGE, EDGE, EDGE, new boolean[cells], Faces.tank(),
                Discretiser.operator(0.501), List.of(), List.of(), 1);
        try (FlowSolver solver = new CpuBackend(threads).solver(trial)) {
            solver.advance(WARM_UP);
            long start = System.nanoTime();
            solver.advance(STEPS);
            return (double) STEPS * cells / ((System.nanoTime() - start) * 1e-9);
        }
    }
}
