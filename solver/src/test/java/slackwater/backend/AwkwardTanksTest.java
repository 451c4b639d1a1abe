package slackwater.backend;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.backend.cpu.CpuBackend;
import slackwater.backend.reference.ReferenceBackend;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;
import slackwater.lattice.Modulation;
import slackwater.lattice.Surfaces;

/**
 * The contract of {@link ContractTest} on tanks whose shape asks for something of its own. Source: the double-precision
 * reference.
 */
class AwkwardTanksTest {
    private static final int STEPS = 13;
    private static final Bgk OPERATOR = new Bgk(0.5006, 0.18);
    private static final float TOLERANCE = 2e-6f;
    /** The stress is a share of less than 0.003 of a speed here. */
    private static final float STRESS_TOLERANCE = 0.003f * TOLERANCE;

    static Stream<Named<LatticeProblem>> problems() {
        return Stream.concat(Stream.of(Named.of("long solid stretches", stretches()),
                Named.of("cells kicked by several sources", sharedCells())), oneCellWide());
    }

    /** The sweep leaves out stretches of 16 solid cells and more: here rows with 70 to 100, some with lone water. */
    private static LatticeProblem stretches() {
        int nx = 150;
        int ny = 8;
        int nz = 9;
        boolean[] solid = new boolean[nx * ny * nz];
        for (int row = 0; row < ny * nz; row++) {
            int j = row % ny;
            int k = row / ny;
            if (j >= 2 && j < 6 && k < 6) {
                int from = row * nx + 25 + row % 6;
                int length = 70 + row * 13 % 31;
                Arrays.fill(solid, from, from + length, true);
                solid[from + (row % 2 == 0 ? 66 : 30)] = row % 3 > 0;
            }
        }
        int[] beside = {(3 * ny + 1) * nx + 60, (3 * ny + 1) * nx + 61, (4 * ny + 1) * nx + 60};
        BodyForce jet = new BodyForce(beside, even(beside), 0.01, -0.004, 0.003, 0.3, 8, new Modulation.Steady());
        LogLaw smooth = new LogLaw(0);
        return new LatticeProblem(nx, ny, nz, solid, Surfaces.all(new LogLaw(0.02)),
                new Faces(smooth, smooth, smooth, smooth, new LogLaw(0.01), new FreeSlip()), OPERATOR, List.of(jet),
                List.of(), 4);
    }

    /** Two jets on the same four cells, fewer than threads, and an inlet on one of them. */
    private static LatticeProblem sharedCells() {
        int[] cells = {222, 223, 234, 351};
        BodyForce steady = new BodyForce(cells, even(cells), 0.012, -0.006, 0.004, 0.3, 8, new Modulation.Steady());
        BodyForce pulsed = new BodyForce(new int[] {351, 234, 223, 222}, new float[] {0.1f, 0.2f, 0.3f, 0.4f}, -0.003,
                0.009, 0.005, 0.2, 5, new Modulation.Square(6, 0.4, 0.1));
        MassSource inlet = new MassSource(new int[] {223}, new float[] {1}, 0.004);
        return new LatticeProblem(12, 9, 10, new boolean[12 * 9 * 10], Faces.tank(), OPERATOR,
                List.of(steady, pulsed), List.of(inlet), 6);
    }

    /** Water whose neighbour across is itself, or that has a wall or a mirror on either side. */
    private static Stream<Named<LatticeProblem>> oneCellWide() {
        Periodic open = new Periodic();
        LogLaw wall = new LogLaw(0.01);
        FreeSlip slip = new FreeSlip();
        LogLaw smooth = new LogLaw(0);
        return Stream.of(List.of(open, open), List.of(slip, wall), List.of(wall, smooth)).flatMap(sides -> Stream.of(
                Named.of("1 x 41 x 23 between " + sides, thin(1, 41, new Faces(sides.get(0), sides.get(1), smooth,
                        wall, wall, slip))),
                Named.of("71 x 1 x 23 between " + sides, thin(71, 1, new Faces(smooth, wall, sides.get(0),
                        sides.get(1), wall, slip)))));
    }

    private static LatticeProblem thin(int nx, int ny, Faces faces) {
        boolean[] solid = new boolean[nx * ny * 23];
        Random random = new Random(2);
        for (int n = 0; n < solid.length; n++) {
            solid[n] = random.nextInt(9) == 0;
        }
        return new LatticeProblem(nx, ny, 23, solid, Surfaces.all(new LogLaw(0.02)), faces, OPERATOR, List.of(),
                List.of(), 1);
    }

    private static float[] even(int[] cells) {
        float[] weights = new float[cells.length];
        Arrays.fill(weights, 1f / cells.length);
        return weights;
    }

    private static float[][] after(Backend backend, LatticeProblem problem) {
        return Stirred.after(backend, problem, STEPS);
    }

    @ParameterizedTest
    @MethodSource("problems")
    void agreesWithTheReference(LatticeProblem problem) {
        float[][] expected = after(new ReferenceBackend(), problem);
        for (Backend backend : List.of(new CpuBackend(1), CpuBackend.plain(1))) {
            float[][] found = after(backend, problem);
            for (int n = 0; n < 4; n++) {
                assertArrayEquals(expected[n], found[n], TOLERANCE, backend.name() + ", array " + n);
            }
            assertArrayEquals(expected[4], found[4], STRESS_TOLERANCE, backend.name() + ", stress");
        }
    }

    @ParameterizedTest
    @MethodSource("problems")
    void threadsChangeNothing(LatticeProblem problem) {
        for (IntFunction<Backend> kind : List.<IntFunction<Backend>>of(CpuBackend::new, CpuBackend::plain)) {
            float[][] expected = after(kind.apply(1), problem);
            for (int threads : new int[] {2, 3, 8}) {
                float[][] found = after(kind.apply(threads), problem);
                for (int n = 0; n < expected.length; n++) {
                    assertArrayEquals(expected[n], found[n], 0, kind.apply(threads).name() + ", " + threads
                            + " threads, array " + n);
                }
            }
        }
    }
}
