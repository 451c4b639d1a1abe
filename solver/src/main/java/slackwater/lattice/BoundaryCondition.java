package slackwater.lattice;

/** What a face of the lattice does to the populations that would leave through it. */
public sealed interface BoundaryCondition {
    /** A wall at rest, half a cell outside the last cell: what a face or the surface of a solid cell can be. */
    sealed interface Wall extends BoundaryCondition {
    }

    /** Water sticks to it: half-way bounce-back. Right where the boundary layer is resolved. Source: [Ladd1994]. */
    record NoSlip() implements Wall {
    }

    /**
     * Water slides along it and feels the friction of a turbulent boundary layer thinner than a cell, by the law of the
     * wall of {@link WallFriction}. Source: [Asmuth2021].
     *
     * @param roughnessLength z0 in cells, 0 for smooth; at most {@link #MOST_ROUGHNESS}
     */
    record LogLaw(double roughnessLength) implements Wall {
        /** Knobs of one cell, z0 = k_s/30: larger ones are geometry. */
        public static final double MOST_ROUGHNESS = 1.0 / 30;

        public LogLaw {
            if (!(roughnessLength >= 0 && roughnessLength <= MOST_ROUGHNESS)) {
                throw new IllegalArgumentException("roughness length " + roughnessLength + " must be 0 to 1/30 cell");
            }
        }
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
