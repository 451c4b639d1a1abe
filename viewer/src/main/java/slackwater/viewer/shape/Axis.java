package slackwater.viewer.shape;

import slackwater.geometry.Vec3;

/** A direction of the tank: X along the front, Y from front to back, Z up. */
public enum Axis {
    X, Y, Z;

    /** A point's place along this axis, metres. */
    public double of(Vec3 point) {
        return switch (this) {
            case X -> point.x();
            case Y -> point.y();
            case Z -> point.z();
        };
    }
}
