package slackwater.lattice;

import java.util.Optional;
import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.BoundaryCondition.MovingWall;
import slackwater.lattice.BoundaryCondition.Periodic;

/**
 * Where the population that arrives at a cell comes from. Every population that leaves a fluid cell arrives at exactly
 * one fluid cell, so mass is kept whatever the boundaries.
 */
public final class Streaming {
    private final LatticeProblem problem;
    private final int[] size;

    public Streaming(LatticeProblem problem) {
        this.problem = problem;
        this.size = new int[] {problem.nx(), problem.ny(), problem.nz()};
    }

    /**
     * Origin of an arriving population.
     *
     * @param cell index of the fluid cell that it left
     * @param direction the direction in which it left
     * @param gain what the wall added to it (6 w c.u for a moving wall, else 0)
     * @param law the law of the wall that turned it round; empty if it met none, or a plain wall as well
     */
    public record Origin(int cell, int direction, double gain, Optional<LogLaw> law) {
    }

    /** Where the population that arrives at fluid cell (i, j, k) in a direction comes from. */
    public Origin origin(int i, int j, int k, int direction) {
        int[] velocity = {VelocitySet.cx(direction), VelocitySet.cy(direction), VelocitySet.cz(direction)};
        int[] here = {i, j, k};
        int[] from = new int[3];
        boolean blocked = false;
        boolean plain = false;
        Optional<LogLaw> law = Optional.empty();
        double gain = 0;
        for (int axis = 0; axis < 3; axis++) {
            int position = here[axis] - velocity[axis];
            if (position < 0 || position >= size[axis]) {
                BoundaryCondition face = problem.faces().face(axis, position >= size[axis]);
                if (face instanceof Periodic) {
                    position = Math.floorMod(position, size[axis]);
                } else if (face instanceof FreeSlip) {
                    position = here[axis];
                    velocity[axis] = -velocity[axis];
                } else {
                    gain += face instanceof MovingWall wall ? gain(direction, wall) : 0;
                    plain |= !(face instanceof LogLaw);
                    law = rougher(law, face);
                    blocked = true;
                    position = here[axis];
                }
            }
            from[axis] = position;
        }
        int source = problem.index(from[0], from[1], from[2]);
        if (!blocked && problem.solid()[source]) {
            blocked = true;
            law = rougher(law, problem.surfaces().wall(source));
        }
        if (blocked) {
            return new Origin(problem.index(i, j, k), VelocitySet.opposite(direction), gain,
                    plain ? Optional.empty() : law);
        }
        return new Origin(source, VelocitySet.direction(velocity[0], velocity[1], velocity[2]), 0, Optional.empty());
    }

    private static Optional<LogLaw> rougher(Optional<LogLaw> law, BoundaryCondition wall) {
        boolean more = wall instanceof LogLaw found
                && (law.isEmpty() || found.roughnessLength() > law.get().roughnessLength());
        return more ? Optional.of((LogLaw) wall) : law;
    }

    private static double gain(int direction, MovingWall wall) {
        double along = VelocitySet.cx(direction) * wall.ux() + VelocitySet.cy(direction) * wall.uy()
                + VelocitySet.cz(direction) * wall.uz();
        return 6 * VelocitySet.weight(direction) * along;
    }
}
