package slackwater.backend;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.backend.cpu.CpuBackend;
import slackwater.backend.reference.ReferenceBackend;
import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.Surfaces;

/**
 * The contract of {@link ContractTest} on rows that fill several vectors of any machine and leave a rest. Source: the
 * double-precision reference.
 */
class LongRowsTest {
    private static final int NX = 77;
    private static final int NY = 6;
    private static final int NZ = 5;
    private static final int STEPS = 9;
    private static final float TOLERANCE = 2e-6f;

    private static LatticeProblem problem() {
        boolean[] solid = new boolean[NX * NY * NZ];
        Random random = new Random(7);
        for (int n = 0; n < solid.length; n++) {
            solid[n] = random.nextInt(25) == 0;
        }
        LogLaw smooth = new LogLaw(0);
        return new LatticeProblem(NX, NY, NZ, solid, Surfaces.all(new LogLaw(0.02)),
                new Faces(smooth, smooth, smooth, smooth, new LogLaw(0.01), new FreeSlip()), new Bgk(0.5006, 0.18),
                List.of(), List.of(), 1);
    }

    private static float[][] after(Backend backend, int steps) {
        return Stirred.after(backend, problem(), steps);
    }

    @Test
    void wholeVectorsAndTheirRestsAgreeWithTheReference() {
        float[][] expected = after(new ReferenceBackend(), STEPS);
        for (Backend backend : List.of(new CpuBackend(1), CpuBackend.plain(1))) {
            float[][] found = after(backend, STEPS);
            for (int n = 0; n < expected.length; n++) {
                assertArrayEquals(expected[n], found[n], TOLERANCE, backend.name() + ", array " + n);
            }
        }
    }

    /** Runs begin with water that was read, so a machine's width of vectors must not show in it. */
    @Test
    void vectorsReadToTheLastBitWhatPlainLoopsRead() {
        float[][] expected = after(CpuBackend.plain(1), 0);
        float[][] found = after(new CpuBackend(1), 0);
        for (int n = 0; n < expected.length; n++) {
            assertArrayEquals(expected[n], found[n], 0, "array " + n);
        }
    }

    @Test
    void threadsChangeNothing() {
        float[][] expected = after(new CpuBackend(1), STEPS);
        for (int threads : new int[] {2, 3, 8}) {
            float[][] found = after(new CpuBackend(threads), STEPS);
            for (int n = 0; n < expected.length; n++) {
                assertArrayEquals(expected[n], found[n], 0, threads + " threads, array " + n);
            }
        }
    }
}
