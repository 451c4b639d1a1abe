package slackwater.backend;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.backend.cpu.CpuBackend;
import slackwater.backend.reference.ReferenceBackend;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.Surfaces;

/** Friction takes what it says it takes. Source: conservation of momentum; nothing to look up. */
class WallStressTest {
    private static final int HEIGHT = 12;
    private static final int CELLS = 4 * HEIGHT * 3;
    private static final double FORCE = 2e-5;

    static List<Backend> backends() {
        return List.of(new ReferenceBackend(), new CpuBackend(2));
    }

    private static LatticeProblem channel(BoundaryCondition wall, double viscosity, double force) {
        Periodic open = new Periodic();
        return new LatticeProblem(4, HEIGHT, 3, new boolean[CELLS], new Faces(open, open, wall, wall, open, open),
                new Bgk(0.5 + 3 * viscosity, 0.1), List.of(BodyForce.uniform(
                        IntStream.range(0, CELLS).toArray(), force, 0, 0)), List.of(), 1);
    }

    private static double momentum(FlowSolver solver, Moments moments) {
        solver.read(moments);
        return IntStream.range(0, CELLS).mapToDouble(
                n -> (1.0 + moments.densityDeviation()[n]) * moments.ux()[n]).sum();
    }

    private static double sum(float[] stress) {
        return IntStream.range(0, stress.length).mapToDouble(n -> stress[n]).sum();
    }

    private static Moments stream(double speed) {
        Moments moments = new Moments(CELLS);
        Arrays.fill(moments.ux(), (float) speed);
        return moments;
    }

    /** Each step the momentum grows by the force less the stress times the area of both walls. */
    @ParameterizedTest
    @MethodSource("backends")
    void momentumLostIsStressTimesArea(Backend backend) {
        try (FlowSolver solver = backend.solver(channel(new LogLaw(0.02), 1e-4, FORCE))) {
            Moments moments = new Moments(CELLS);
            float[] stress = new float[CELLS];
            solver.initialise(stream(0.08));
            solver.readWallStress(stress);
            assertEquals(0, sum(stress), 0);
            double before = momentum(solver, moments);
            double lost = 0;
            for (int n = 0; n < 200; n++) {
                solver.advance(1);
                solver.readWallStress(stress);
                lost += sum(stress);
            }
            double expected = 200 * CELLS * FORCE - lost;
            assertEquals(expected, momentum(solver, moments) - before, 1e-3 * lost);
            assertTrue(lost > 0.2, "the walls took " + lost);
        }
    }

    /** In a steady channel the stress on each wall is g H/2. */
    @ParameterizedTest
    @MethodSource("backends")
    void steadyChannelBalances(Backend backend) {
        try (FlowSolver solver = backend.solver(channel(new LogLaw(0.03), 0.02, FORCE))) {
            float[] stress = new float[CELLS];
            solver.advance(12_000);
            solver.readWallStress(stress);
            for (int n = 0; n < CELLS; n++) {
                int j = n / 4 % HEIGHT;
                double expected = j == 0 || j == HEIGHT - 1 ? FORCE * HEIGHT / 2 : 0;
                assertEquals(expected, stress[n], 1e-3 * FORCE * HEIGHT / 2);
            }
        }
    }

    /** Walls at rest do no work: stirred water in a sponge of rock calms down. Source: conservation of energy. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void wallsDoNoWork(int seed) {
        int n = 20;
        boolean[] solid = new boolean[n * n * n];
        Moments moments = new Moments(solid.length);
        Random random = new Random(seed);
        for (int cell = 0; cell < solid.length; cell++) {
            solid[cell] = random.nextDouble() < 0.5;
            if (!solid[cell]) {
                moments.ux()[cell] = (float) (0.1 * (random.nextDouble() - 0.5));
                moments.uy()[cell] = (float) (0.1 * (random.nextDouble() - 0.5));
                moments.uz()[cell] = (float) (0.1 * (random.nextDouble() - 0.5));
            }
        }
        LatticeProblem problem = new LatticeProblem(n, n, n, solid, Surfaces.all(new LogLaw(LogLaw.MOST_ROUGHNESS)),
                Faces.tank(), new Bgk(0.50003, 0.2), List.of(), List.of(), 1);
        try (FlowSolver solver = new CpuBackend(2).solver(problem)) {
            solver.initialise(moments);
            double energy = energy(moments);
            for (int sample = 0; sample < 8; sample++) {
                solver.advance(100);
                solver.read(moments);
                assertTrue(energy(moments) < energy, "after " + solver.step() + " steps " + energy(moments));
                energy = energy(moments);
            }
        }
    }

    private static double energy(Moments moments) {
        return IntStream.range(0, moments.cells()).mapToDouble(n -> moments.ux()[n] * moments.ux()[n]
                + moments.uy()[n] * moments.uy()[n] + moments.uz()[n] * moments.uz()[n]).sum();
    }

    /** Rows longer than any vector and than those that threads share, with corners and a block of rock. */
    @Test
    void longRowsAgreeWithTheReference() {
        boolean[] solid = new boolean[150 * 7 * 6];
        for (int n = 0; n < solid.length; n++) {
            solid[n] = n % 150 >= 40 && n % 150 < 75 && n / 150 % 7 == 3 && n / 150 / 7 < 3;
        }
        LatticeProblem problem = new LatticeProblem(150, 7, 6, solid, Surfaces.all(new LogLaw(0.03)), Faces.tank(),
                new Bgk(0.5001, 0.2), List.of(), List.of(), 1);
        Moments moments = new Moments(solid.length);
        Random random = new Random(8);
        for (int n = 0; n < solid.length; n++) {
            moments.ux()[n] = solid[n] ? 0 : 0.1f * (random.nextFloat() - 0.3f);
            moments.uy()[n] = solid[n] ? 0 : 0.1f * (random.nextFloat() - 0.5f);
            moments.uz()[n] = solid[n] ? 0 : 0.1f * (random.nextFloat() - 0.5f);
        }
        Moments[] found = {new Moments(solid.length), new Moments(solid.length)};
        float[][] stress = new float[2][solid.length];
        for (int which = 0; which < 2; which++) {
            try (FlowSolver solver = backends().get(which).solver(problem)) {
                solver.initialise(moments);
                solver.advance(9);
                solver.read(found[which]);
                solver.readWallStress(stress[which]);
            }
        }
        assertArrayEquals(found[0].ux(), found[1].ux(), 2e-6f);
        assertArrayEquals(found[0].uy(), found[1].uy(), 2e-6f);
        assertArrayEquals(found[0].uz(), found[1].uz(), 2e-6f);
        assertArrayEquals(stress[0], stress[1], 5e-8f);
        assertTrue(sum(stress[0]) > 0.01, "the walls felt " + sum(stress[0]));
    }

    /**
     * At a Reynolds number of 1e10 smooth friction takes 3e-5 of the first cells' momentum in a step: a frictionless
     * wall is left, and the stream keeps its momentum (exact). Plain bounce-back takes a third of it in the first step.
     */
    @ParameterizedTest
    @MethodSource("backends")
    void slidesWhereThereIsNoFriction(Backend backend) {
        Moments moments = new Moments(CELLS);
        Moments start = stream(0);
        double[] before = new double[2];
        for (int n = 0; n < CELLS; n++) {
            start.ux()[n] = (float) (0.08 + 0.03 * Math.sin(n / 4 % HEIGHT));
            start.uz()[n] = 0.02f;
            before[0] += start.ux()[n];
            before[1] += start.uz()[n];
        }
        try (FlowSolver solver = backend.solver(channel(new LogLaw(0), 1e-12, 0))) {
            solver.initialise(start);
            solver.advance(20);
            solver.read(moments);
        }
        for (int n = 0; n < CELLS; n++) {
            before[0] -= moments.ux()[n] * (1 + moments.densityDeviation()[n]);
            before[1] -= moments.uz()[n] * (1 + moments.densityDeviation()[n]);
        }
        assertEquals(0, before[0], 1e-3 * 0.08 * CELLS);
        assertEquals(0, before[1], 1e-3 * 0.02 * CELLS);
    }
}
