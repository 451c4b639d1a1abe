package slackwater.backend.cpu;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.backend.Moments;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;
import slackwater.lattice.Modulation;
import slackwater.lattice.Surfaces;

/**
 * A step allocates nothing once it is compiled. Vectors that the compiler could not keep in registers would show here:
 * they live on the heap and make a sweep many times slower. Source: the Java machine's own count; nothing to look up.
 */
class AllocationTest {
    private static final int EDGE = 32;
    private static final int STEPS = 100;
    /** Compiling may take some rounds. */
    private static final int ROUNDS = 60;

    /** A tank with a slanted step of rock, walls of the law of the wall, a pump, an inlet and an outlet. */
    private static LatticeProblem tank() {
        boolean[] solid = new boolean[EDGE * EDGE * EDGE];
        for (int n = 0; n < solid.length; n++) {
            solid[n] = n % EDGE + n / EDGE % EDGE + n / EDGE / EDGE < EDGE * 2 / 3;
        }
        int[] jet = {index(20, 20, 20), index(20, 21, 20)};
        int[] inlet = {index(25, 10, 28)};
        int[] outlet = {index(10, 25, 28)};
        float[] half = {0.5f, 0.5f};
        LogLaw rough = new LogLaw(0.02);
        LogLaw smooth = new LogLaw(0);
        return new LatticeProblem(EDGE, EDGE, EDGE, solid, Surfaces.all(rough),
                new Faces(smooth, smooth, smooth, smooth, rough, new FreeSlip()), new Bgk(0.5001, 0.18),
                List.of(new BodyForce(jet, half, 1e-3, 0, 0, 0.2, 8, new Modulation.Steady())),
                List.of(new MassSource(inlet, new float[] {1}, 1e-3), new MassSource(outlet, new float[] {1}, -1e-3)),
                1);
    }

    private static int index(int i, int j, int k) {
        return i + EDGE * (j + EDGE * k);
    }

    @Test
    void aStepAllocatesNothing() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        LatticeProblem tank = tank();
        Moments still = new Moments(tank.cells());
        Arrays.fill(still.ux(), 0);
        try (CpuSolver solver = new CpuSolver(tank, 1, true)) {
            solver.initialise(still);
            long least = Long.MAX_VALUE;
            for (int round = 0; round < ROUNDS && least > 0; round++) {
                long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
                solver.advance(STEPS);
                least = Math.min(least, threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before);
            }
            assertTrue(least < STEPS, STEPS + " steps allocate " + least + " bytes");
        }
    }
}
