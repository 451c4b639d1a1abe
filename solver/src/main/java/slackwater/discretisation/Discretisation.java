package slackwater.discretisation;

import java.util.Optional;
import slackwater.field.Velocity;
import slackwater.lattice.LatticeProblem;
import slackwater.units.LatticeUnits;

/**
 * A scenario on a grid.
 *
 * @param voxels water and solid
 * @param units scale between SI and lattice
 * @param plan how time is cut
 * @param problem what the back end is given
 * @param start the water that the run begins with, on any grid of the same tank; water at rest if empty
 */
public record Discretisation(Voxels voxels, LatticeUnits units, TimePlan plan, LatticeProblem problem,
                             Optional<Velocity> start) {
    /** Begins with water at rest. */
    public Discretisation(Voxels voxels, LatticeUnits units, TimePlan plan, LatticeProblem problem) {
        this(voxels, units, plan, problem, Optional.empty());
    }

    /** The same, begun with other water. */
    public Discretisation begunWith(Optional<Velocity> water) {
        return new Discretisation(voxels, units, plan, problem, water);
    }
}
