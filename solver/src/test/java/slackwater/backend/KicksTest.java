package slackwater.backend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.backend.cpu.CpuBackend;
import slackwater.lattice.BodyForce;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;
import slackwater.lattice.Modulation;

/** What jets, inlets and outlets put in is exactly what they were told to. Source: conservation laws. */
class KicksTest {
    private static final int N = 24;
    private static final int STEPS = 400;

    private static double[] totals(LatticeProblem problem, int steps) {
        Moments moments = new Moments(problem.cells());
        try (FlowSolver solver = new CpuBackend(2).solver(problem)) {
            solver.advance(steps);
            solver.read(moments);
        }
        double[] totals = new double[4];
        for (int n = 0; n < moments.cells(); n++) {
            double density = 1 + moments.densityDeviation()[n];
            totals[0] += moments.densityDeviation()[n];
            totals[1] += density * moments.ux()[n];
            totals[2] += density * moments.uy()[n];
            totals[3] += density * moments.uz()[n];
        }
        return totals;
    }

    private static LatticeProblem periodicBox(List<BodyForce> forces, List<MassSource> sources) {
        return new LatticeProblem(N, N, N, new boolean[N * N * N], Faces.periodic(),
                new Bgk(0.501, 0.1), forces, sources, 9);
    }

    /** With no wall to take it up, momentum grows by the thrust each step, whatever the random part does. */
    @Test
    void momentumPutInIsTheThrust() {
        int[] cells = IntStream.range(0, N * N * N).filter(n -> n % N > 8 && n % N < 12
                && Math.hypot(n / N % N - 12, n / N / N - 12) < 3).toArray();
        float[] weights = new float[cells.length];
        Arrays.fill(weights, 1f / cells.length);
        double fx = 0.02;
        double fy = -0.006;
        BodyForce jet = new BodyForce(cells, weights, fx, fy, 0, 0.3, 20, new Modulation.Steady());
        double[] totals = totals(periodicBox(List.of(jet), List.of()), STEPS);
        double reading = STEPS + 0.5;
        assertEquals(fx * reading, totals[1], 1e-4 * fx * reading, "x");
        assertEquals(fy * reading, totals[2], 1e-4 * fx * reading, "y");
        assertEquals(0, totals[3], 1e-4 * fx * reading, "z");
    }

    /** A pulse between full speed and a low share puts in the mean of the squares. */
    @Test
    void pulsedThrustGoesWithTheSquareOfTheSpeed() {
        int[] cells = {N * N * 12 + N * 12 + 12, N * N * 12 + N * 12 + 13};
        BodyForce jet = new BodyForce(cells, new float[] {0.5f, 0.5f}, 0.001, 0, 0, 0, 1,
                new Modulation.Square(100, 0.5, 0));
        double expected = 0.001 * STEPS * (1 + 0.25) / 2;
        assertEquals(expected, totals(periodicBox(List.of(jet), List.of()), STEPS)[1], 0.003 * expected);
    }

    @Test
    void whatEntersLeaves() {
        int[] in = IntStream.range(0, 20).map(n -> N * N * 5 + N * 7 + n).toArray();
        int[] out = IntStream.range(0, 20).map(n -> N * N * 18 + N * 9 + n).toArray();
        float[] even = new float[20];
        Arrays.fill(even, 0.05f);
        double rate = 0.05;
        double oneWay = totals(periodicBox(List.of(), List.of(new MassSource(in, even, rate))), 50)[0];
        assertEquals(50 * rate, oneWay, 1e-4 * 50 * rate);
        double both = totals(periodicBox(List.of(), List.of(new MassSource(in, even, rate),
                new MassSource(out, even, -rate))), STEPS)[0];
        assertTrue(Math.abs(both) < 1e-5 * N * N * N, "mass changed by " + both);
    }

    @Test
    void nothingMovesByItself() {
        boolean[] solid = new boolean[N * N * N];
        for (int n = 0; n < solid.length; n++) {
            solid[n] = n % 7 == 0;
        }
        LatticeProblem still = new LatticeProblem(N, N, N, solid, Faces.tank(),
                new Bgk(0.5001, 0.1), List.of(), List.of(), 1);
        Moments moments = new Moments(still.cells());
        try (FlowSolver solver = new CpuBackend(2).solver(still)) {
            solver.advance(STEPS);
            solver.read(moments);
        }
        for (int n = 0; n < moments.cells(); n++) {
            assertEquals(0, moments.ux()[n], 0);
            assertEquals(0, moments.uz()[n], 0);
        }
    }
}
