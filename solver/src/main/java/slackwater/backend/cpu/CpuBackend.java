package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.List;
import slackwater.backend.Backend;
import slackwater.backend.FlowSolver;
import slackwater.lattice.LatticeProblem;

/**
 * The fast back end: single precision, in place, vectorised, several threads, the same bits on any number of them.
 */
public final class CpuBackend implements Backend {
    private static final String VECTOR_MODULE = "jdk.incubator.vector";

    private final int threads;

    public CpuBackend(int threads) {
        if (threads < 1) {
            throw new IllegalArgumentException(threads + " threads: there must be at least 1");
        }
        this.threads = threads;
    }

    /** Bytes for the populations of a tank of this many cells, with the padding; links come on top. */
    public static long populationBytes(int nx, int ny, int nz) {
        return Layout.floats(nx, ny, nz) * Float.BYTES;
    }

    @Override
    public String name() {
        return "cpu";
    }

    @Override
    public List<String> obstacles(LatticeProblem problem) {
        List<String> obstacles = new ArrayList<>();
        if (ModuleLayer.boot().findModule(VECTOR_MODULE).isEmpty()) {
            obstacles.add("the Java machine was started without its vector module: add --add-modules "
                    + VECTOR_MODULE + ", as the launcher does");
        }
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
        return new CpuSolver(problem, threads);
    }
}
