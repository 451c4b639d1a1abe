package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.List;
import slackwater.backend.Backend;
import slackwater.backend.FlowSolver;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.VelocitySet;

/**
 * The fast back end: single precision, in place, several threads, the same bits on any number of them; vectorised where
 * the Java machine was started with its vector module, else by plain loops, several times slower, with the same results
 * within rounding.
 */
public final class CpuBackend implements Backend {
    /** Memory that a step of a cell reads and writes at least: every population once. */
    public static final int BYTES_PER_CELL = 2 * Float.BYTES * VelocitySet.Q;
    /** Additions, multiplications, divisions and roots in the collision of a cell, counted in {@link BgkSweep}. */
    public static final int OPERATIONS_PER_CELL = 315;

    private static final String VECTOR_MODULE = "jdk.incubator.vector";

    private final int threads;
    private final boolean vectors;

    public CpuBackend(int threads) {
        this(threads, ModuleLayer.boot().findModule(VECTOR_MODULE).isPresent());
    }

    private CpuBackend(int threads, boolean vectors) {
        if (threads < 1) {
            throw new IllegalArgumentException(threads + " threads: there must be at least 1");
        }
        this.threads = threads;
        this.vectors = vectors;
    }

    /** The same by plain loops, whatever the Java machine has. */
    public static CpuBackend plain(int threads) {
        return new CpuBackend(threads, false);
    }

    /** Bytes for the populations of a tank of this many cells, with the padding; links come on top. */
    public static long populationBytes(int nx, int ny, int nz) {
        return Layout.floats(nx, ny, nz) * Float.BYTES;
    }

    @Override
    public String name() {
        return vectors ? "cpu" : "cpu, plain loops";
    }

    @Override
    public List<String> obstacles(LatticeProblem problem) {
        List<String> obstacles = new ArrayList<>();
        if (Layout.floats(problem.nx(), problem.ny(), problem.nz()) > Integer.MAX_VALUE - 8) {
            obstacles.add(problem.cells() + " cells are more than one Java array can hold (about 100 million)");
        }
        return obstacles;
    }

    @Override
    public FlowSolver solver(LatticeProblem problem) {
        List<String> obstacles = obstacles(problem);
        if (!obstacles.isEmpty()) {
            throw new IllegalArgumentException("the cpu back end cannot start: " + String.join("; ", obstacles));
        }
        return new CpuSolver(problem, threads, vectors);
    }
}
