package slackwater.lattice;

import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.BoundaryCondition.Periodic;

/** The boundary condition on each of the six faces. */
public record Faces(BoundaryCondition lowX, BoundaryCondition highX, BoundaryCondition lowY, BoundaryCondition highY,
                    BoundaryCondition lowZ, BoundaryCondition highZ) {
    public Faces {
        requirePaired(lowX, highX, "x");
        requirePaired(lowY, highY, "y");
        requirePaired(lowZ, highZ, "z");
    }

    /** Smooth glass all round and under, a free surface on top. */
    public static Faces tank() {
        LogLaw glass = new LogLaw(0);
        return new Faces(glass, glass, glass, glass, glass, new FreeSlip());
    }

    /** No wall anywhere. */
    public static Faces periodic() {
        Periodic open = new Periodic();
        return new Faces(open, open, open, open, open, open);
    }

    /** The condition on the low or high face of an axis (0, 1, 2 for x, y, z). */
    BoundaryCondition face(int axis, boolean high) {
        return switch (axis) {
            case 0 -> high ? highX : lowX;
            case 1 -> high ? highY : lowY;
            default -> high ? highZ : lowZ;
        };
    }

    private static void requirePaired(BoundaryCondition low, BoundaryCondition high, String axis) {
        if (low instanceof Periodic != high instanceof Periodic) {
            throw new IllegalArgumentException("both faces along " + axis + " must be periodic, or neither");
        }
    }
}
