package slackwater.backend;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.backend.cpu.CpuBackend;
import slackwater.backend.reference.ReferenceBackend;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.BoundaryCondition.MovingWall;
import slackwater.lattice.BoundaryCondition.NoSlip;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;
import slackwater.lattice.Modulation;
import slackwater.lattice.Surfaces;

/**
 * What every back end owes: the flow of the double-precision reference, on an awkward size, with every operator and
 * every boundary, rock, jets, inlet and outlet.
 */
class ContractTest {
    private static final int NX = 7;
    private static final int NY = 11;
    private static final int NZ = 18;
    private static final int STEPS = 13;
    /** Single precision keeps 1e-7 of a population of order 0.1; 13 steps and 19 sums leave room for 1e-6. */
    private static final float TOLERANCE = 2e-6f;
    /** The stress is a share of at most 0.2 of a speed, and most often of 0.003. */
    private static final float STRESS_TOLERANCE = 0.2f * TOLERANCE;

    static Stream<LatticeProblem> problems() {
        List<CollisionOperator> operators = List.of(new Bgk(0.5006, 0.2), new Bgk(0.8, 0));
        NoSlip wall = new NoSlip();
        FreeSlip slip = new FreeSlip();
        Periodic open = new Periodic();
        List<Faces> faces = List.of(Faces.tank(), Faces.periodic(),
                new Faces(wall, wall, wall, wall, wall, new MovingWall(0.05, 0.02, 0)),
                new Faces(slip, slip, open, open, slip, slip),
                new Faces(open, open, wall, slip, new MovingWall(-0.03, 0, 0), slip),
                new Faces(new LogLaw(0.02), wall, new LogLaw(0), new LogLaw(0.03), new MovingWall(0.02, -0.03, 0),
                        new LogLaw(0.001)));
        return operators.stream().flatMap(operator -> faces.stream().flatMap(
                face -> Stream.of(problem(face, operator, false), problem(face, operator, true))));
    }

    /** Rock of three kinds: plain, smooth and rough. */
    private static Surfaces surfaces() {
        byte[] kinds = new byte[NX * NY * NZ];
        for (int n = 0; n < kinds.length; n++) {
            kinds[n] = (byte) (n / 5 % 3);
        }
        return new Surfaces(List.of(new NoSlip(), new LogLaw(0), new LogLaw(LogLaw.MOST_ROUGHNESS)), kinds);
    }

    private static LatticeProblem problem(Faces faces, CollisionOperator operator, boolean rock) {
        boolean[] solid = new boolean[NX * NY * NZ];
        Random random = new Random(5);
        for (int n = 0; n < solid.length && rock; n++) {
            solid[n] = random.nextInt(5) == 0;
        }
        int[] water = IntStream.range(0, solid.length).filter(n -> !solid[n]).toArray();
        int[] jet = Arrays.copyOfRange(water, 300, 340);
        int[] inlet = Arrays.copyOfRange(water, 500, 510);
        int[] outlet = Arrays.copyOfRange(water, water.length - 20, water.length);
        BodyForce force = new BodyForce(jet, even(jet), 0.02, -0.01, 0.015, 0.3, 8,
                new Modulation.Sine(9, 0.2, 0.1));
        return new LatticeProblem(NX, NY, NZ, solid, surfaces(), faces, operator, List.of(force), List.of(
                new MassSource(inlet, even(inlet), 0.01), new MassSource(outlet, even(outlet), -0.01)), 42);
    }

    private static float[] even(int[] cells) {
        float[] weights = new float[cells.length];
        Arrays.fill(weights, 1f / cells.length);
        return weights;
    }

    private static Moments start() {
        Moments moments = new Moments(NX * NY * NZ);
        Random random = new Random(3);
        for (int n = 0; n < moments.cells(); n++) {
            moments.densityDeviation()[n] = 0.01f * (random.nextFloat() - 0.5f);
            moments.ux()[n] = 0.1f * (random.nextFloat() - 0.5f);
            moments.uy()[n] = 0.1f * (random.nextFloat() - 0.5f);
            moments.uz()[n] = 0.1f * (random.nextFloat() - 0.5f);
        }
        return moments;
    }

    private static Moments after(Backend backend, LatticeProblem problem, int... advances) {
        try (FlowSolver solver = backend.solver(problem)) {
            solver.initialise(start());
            Moments moments = new Moments(problem.cells());
            for (int steps : advances) {
                solver.advance(steps);
                solver.read(moments);
                // Reading twice must change nothing either.
                solver.read(moments);
            }
            assertEquals(Arrays.stream(advances).sum(), solver.step());
            return moments;
        }
    }

    @ParameterizedTest
    @MethodSource("problems")
    void agreesWithTheReference(LatticeProblem problem) {
        Moments expected = after(new ReferenceBackend(), problem, STEPS);
        for (Backend backend : List.of(new CpuBackend(2), CpuBackend.plain(3))) {
            Moments found = after(backend, problem, STEPS);
            assertArrayEquals(expected.densityDeviation(), found.densityDeviation(), TOLERANCE);
            assertArrayEquals(expected.ux(), found.ux(), TOLERANCE);
            assertArrayEquals(expected.uy(), found.uy(), TOLERANCE);
            assertArrayEquals(expected.uz(), found.uz(), TOLERANCE);
        }
    }

    private static float[] stressAfter(Backend backend, LatticeProblem problem, int... advances) {
        try (FlowSolver solver = backend.solver(problem)) {
            float[] stress = new float[problem.cells()];
            solver.initialise(start());
            for (int steps : advances) {
                solver.advance(steps);
                solver.readWallStress(stress);
            }
            return stress;
        }
    }

    @ParameterizedTest
    @MethodSource("problems")
    void wallStressAgrees(LatticeProblem problem) {
        float[] expected = stressAfter(new ReferenceBackend(), problem, STEPS);
        float[] found = stressAfter(new CpuBackend(2), problem, STEPS);
        assertArrayEquals(expected, found, STRESS_TOLERANCE);
        assertArrayEquals(found, stressAfter(new CpuBackend(3), problem, 1, 7, 5), 0);
        assertArrayEquals(expected, stressAfter(CpuBackend.plain(2), problem, STEPS), STRESS_TOLERANCE);
    }

    @ParameterizedTest
    @MethodSource("problems")
    void sameBitsOnAnyThreadsAndInAnyPortions(LatticeProblem problem) {
        Moments whole = after(new CpuBackend(1), problem, 7);
        for (int threads : new int[] {1, 2, 3, 8}) {
            Moments parts = after(new CpuBackend(threads), problem, 3, 4);
            assertArrayEquals(whole.ux(), parts.ux(), 0);
            assertArrayEquals(whole.uy(), parts.uy(), 0);
            assertArrayEquals(whole.uz(), parts.uz(), 0);
            assertArrayEquals(whole.densityDeviation(), parts.densityDeviation(), 0);
        }
    }

    /** Going on from a stored state is as good as not having stopped; jets without a random part, which begins anew. */
    @ParameterizedTest
    @MethodSource("problems")
    void goesOnFromAState(LatticeProblem random) {
        LatticeProblem problem = calm(random, random.solid());
        for (int pause : new int[] {0, 5, 6}) {
            Moments expected = after(new CpuBackend(2), problem, STEPS);
            Moments found = resumed(new CpuBackend(2), new CpuBackend(3), problem, problem, pause, STEPS - pause);
            assertArrayEquals(expected.ux(), found.ux(), 0);
            assertArrayEquals(expected.densityDeviation(), found.densityDeviation(), 0);
            Moments reference = resumed(new CpuBackend(2), new ReferenceBackend(), problem, problem, pause,
                    STEPS - pause);
            assertArrayEquals(expected.ux(), reference.ux(), TOLERANCE);
            assertArrayEquals(expected.densityDeviation(), reference.densityDeviation(), TOLERANCE);
        }
    }

    /** Where water stays water it keeps its flow; where rock was taken away it rests; new rock holds nothing. */
    @ParameterizedTest
    @MethodSource("problems")
    void rockMayChangeUnderway(LatticeProblem random) {
        LatticeProblem problem = calm(random, random.solid());
        boolean[] other = problem.solid().clone();
        int[] spared = IntStream.concat(IntStream.of(problem.forces().get(0).cells()), problem.massSources().stream()
                .flatMapToInt(source -> IntStream.of(source.cells()))).toArray();
        for (int n = 0; n < other.length; n += 7) {
            int cell = n;
            other[n] ^= IntStream.of(spared).noneMatch(kept -> kept == cell);
        }
        LatticeProblem changed = calm(random, other);
        for (List<Backend> pair : List.of(List.<Backend>of(new CpuBackend(2), new CpuBackend(2)),
                List.<Backend>of(new CpuBackend(1), new ReferenceBackend()))) {
            Moments before = after(new CpuBackend(2), problem, 5);
            Moments now = resumed(pair.get(0), pair.get(1), problem, changed, 5, 0);
            for (int n = 0; n < other.length; n++) {
                boolean kept = !other[n] && !problem.solid()[n];
                assertEquals(kept ? before.ux()[n] : 0, now.ux()[n], TOLERANCE, "cell " + n);
                assertEquals(kept ? before.densityDeviation()[n] : 0, now.densityDeviation()[n], TOLERANCE);
            }
        }
        assertArrayEquals(resumed(new CpuBackend(2), new ReferenceBackend(), problem, changed, 5, 8).uy(),
                resumed(new CpuBackend(2), new CpuBackend(2), problem, changed, 5, 8).uy(), TOLERANCE);
    }

    private static Moments resumed(Backend first, Backend second, LatticeProblem before, LatticeProblem after,
                                   int pause, int more) {
        Moments moments = new Moments(before.cells());
        try (FlowSolver one = first.solver(before); FlowSolver other = second.solver(after)) {
            one.initialise(start());
            one.advance(pause);
            other.advance(3); // what it did before must not matter
            other.resume(one.state());
            assertEquals(pause, other.step());
            other.advance(more);
            other.read(moments);
        }
        return moments;
    }

    private static LatticeProblem calm(LatticeProblem problem, boolean[] solid) {
        BodyForce jet = problem.forces().get(0);
        BodyForce calm = new BodyForce(jet.cells(), jet.weights(), jet.fx(), jet.fy(), jet.fz(), 0, 8,
                jet.modulation());
        return new LatticeProblem(NX, NY, NZ, solid, problem.surfaces(), problem.faces(), problem.operator(),
                List.of(calm), problem.massSources(), 42);
    }

    @ParameterizedTest
    @MethodSource("problems")
    void keepsMass(LatticeProblem problem) {
        Moments begin = start();
        for (Backend backend : List.of(new ReferenceBackend(), new CpuBackend(2))) {
            Moments moments = after(backend, problem, STEPS);
            double change = 0;
            for (int n = 0; n < problem.cells(); n++) {
                change += problem.solid()[n] ? 0 : moments.densityDeviation()[n] - begin.densityDeviation()[n];
            }
            assertTrue(Math.abs(change) < 1e-4, backend.name() + ": mass changed by " + change);
        }
    }
}
