package slackwater.lattice;

/** What a face of the lattice does to the populations that would leave through it. */
public sealed interface BoundaryCondition {
    /** A wall at rest, half a cell outside the last cell: half-way bounce-back. Source: [Ladd1994]. */
    record NoSlip() implements BoundaryCondition {
    }

    /** A frictionless lid: populations are mirrored. */
    record FreeSlip() implements BoundaryCondition {
    }

    /** The opposite face follows. Both faces of an axis must be periodic together. */
    record Periodic() implements BoundaryCondition {
    }

    /** A wall that moves in its own plane, velocity in cells a step. Source: [Ladd1994]. */
    record MovingWall(double ux, double uy, double uz) implements BoundaryCondition {
    }
}
