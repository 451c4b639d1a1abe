package slackwater.backend;

import java.util.Random;
import slackwater.lattice.LatticeProblem;

/** Water stirred at random, always the same way, and what becomes of it. */
final class Stirred {
    private static final float DENSITY = 0.01f;
    private static final float SPEED = 0.1f;

    private Stirred() {
    }

    /** Density, the three components of velocity, and the walls' stress after some steps. */
    static float[][] after(Backend backend, LatticeProblem problem, int steps) {
        Moments moments = new Moments(problem.cells());
        Random random = new Random(3);
        for (int n = 0; n < moments.cells(); n++) {
            moments.densityDeviation()[n] = DENSITY * (random.nextFloat() - 0.5f);
            moments.ux()[n] = SPEED * (random.nextFloat() - 0.5f);
            moments.uy()[n] = SPEED * (random.nextFloat() - 0.5f);
            moments.uz()[n] = SPEED * (random.nextFloat() - 0.5f);
        }
        float[] stress = new float[problem.cells()];
        try (FlowSolver solver = backend.solver(problem)) {
            solver.initialise(moments);
            solver.advance(steps);
            solver.read(moments);
            solver.readWallStress(stress);
        }
        return new float[][] {moments.densityDeviation(), moments.ux(), moments.uy(), moments.uz(), stress};
    }
}
