package slackwater.backend;

import java.util.List;
import slackwater.lattice.LatticeProblem;

/** Something that can solve a lattice problem. */
public interface Backend {
    String name();

    /** Why this back end cannot take the problem, one sentence each; empty if it can. */
    List<String> obstacles(LatticeProblem problem);

    /**
     * A solver at rest at step 0.
     *
     * @throws IllegalArgumentException if there are obstacles
     */
    FlowSolver solver(LatticeProblem problem);
}
