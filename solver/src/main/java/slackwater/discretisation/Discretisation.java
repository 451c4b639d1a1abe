package slackwater.discretisation;

import slackwater.lattice.LatticeProblem;
import slackwater.units.LatticeUnits;

/**
 * A scenario on a grid.
 *
 * @param voxels water and solid
 * @param units scale between SI and lattice
 * @param plan how time is cut
 * @param problem what the back end is given
 */
public record Discretisation(Voxels voxels, LatticeUnits units, TimePlan plan, LatticeProblem problem) {
}
