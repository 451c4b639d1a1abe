package slackwater.backend.reference;

import java.util.List;
import slackwater.backend.Backend;
import slackwater.backend.FlowSolver;
import slackwater.lattice.LatticeProblem;

/** The oracle: double precision, one thread, slow, and as close to the textbook as code can be. */
public final class ReferenceBackend implements Backend {
    @Override
    public String name() {
        return "reference";
    }

    @Override
    public List<String> obstacles(LatticeProblem problem) {
        return List.of();
    }

    @Override
    public FlowSolver solver(LatticeProblem problem) {
        return new ReferenceSolver(problem);
    }
}
