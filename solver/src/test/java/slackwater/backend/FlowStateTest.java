package slackwater.backend;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.backend.cpu.CpuBackend;
import slackwater.lattice.BodyForce;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.Modulation;

/** The same flow in steps of another length. */
class FlowStateTest {
    private static final int N = 10;

    @Test
    void momentsScaleAsVelocitiesAndPressuresDo() {
        LatticeProblem problem = driven(0.6, 0.02);
        FlowState state = after(problem, 40);
        Moments before = moments(problem, state);
        Moments half = moments(problem, state.scaled(0.5));
        for (int n = 0; n < before.cells(); n++) {
            assertEquals(before.densityDeviation()[n] / 4, half.densityDeviation()[n], 1e-6);
        }
        FlowState back = state.scaled(0.5).scaled(2);
        assertArrayEquals(state.deviations(), back.deviations(), 1e-6f);
        assertEquals(40, back.step());
        assertEquals(80, state.scaled(0.5).step());
    }

    /**
     * A shear flow that decays (exact solution of the Navier-Stokes equations): after a change to half the step it goes
     * on decaying as if nothing had happened, which it would not if the strain were lost.
     */
    @Test
    void decayGoesOnAcrossAChangeOfStep() {
        double viscosity = 0.02;
        LatticeProblem coarse = free(0.5 + 3 * viscosity);
        LatticeProblem fine = free(0.5 + 3 * viscosity / 2);
        Moments start = new Moments(N * N * N);
        double k = 2 * Math.PI / N;
        for (int n = 0; n < start.cells(); n++) {
            start.ux()[n] = (float) (0.05 * Math.sin(k * (n / N % N + 0.5)));
        }
        try (FlowSolver one = new CpuBackend(1).solver(coarse); FlowSolver two = new CpuBackend(1).solver(fine)) {
            one.initialise(start);
            one.advance(50);
            double before = amplitude(one);
            two.resume(one.state().scaled(0.5));
            assertEquals(before / 2, amplitude(two), 1e-6);
            two.advance(2);
            double early = amplitude(two) * 2;
            two.advance(98);
            double expected = Math.exp(-viscosity * k * k * 50);
            assertEquals(expected, 2 * amplitude(two) / before, 0.01, "50 old steps further on");
            assertEquals(Math.exp(-viscosity * k * k), early / before, 0.002, "one old step further on");
        }
    }

    private static double amplitude(FlowSolver solver) {
        Moments moments = new Moments(N * N * N);
        solver.read(moments);
        return IntStream.range(0, moments.cells()).mapToDouble(n -> moments.ux()[n]).max().orElseThrow();
    }

    private static LatticeProblem free(double tau) {
        return new LatticeProblem(N, N, N, new boolean[N * N * N], Faces.periodic(), new Bgk(tau, 0), List.of(),
                List.of(), 1);
    }

    private static LatticeProblem driven(double tau, double force) {
        int[] cells = IntStream.range(300, 330).toArray();
        float[] weights = new float[cells.length];
        Arrays.fill(weights, 1f / cells.length);
        BodyForce jet = new BodyForce(cells, weights, force, 0, 0, 0, 1, new Modulation.Steady());
        return new LatticeProblem(N, N, N, new boolean[N * N * N], Faces.tank(), new Bgk(tau, 0), List.of(jet),
                List.of(), 1);
    }

    private static FlowState after(LatticeProblem problem, int steps) {
        try (FlowSolver solver = new CpuBackend(1).solver(problem)) {
            solver.advance(steps);
            return solver.state();
        }
    }

    private static Moments moments(LatticeProblem problem, FlowState state) {
        Moments moments = new Moments(problem.cells());
        try (FlowSolver solver = new CpuBackend(1).solver(problem)) {
            solver.resume(state);
            solver.read(moments);
        }
        return moments;
    }
}
