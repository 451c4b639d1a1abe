package slackwater.report;

import slackwater.geometry.Vec3;

/** The three ways to cut a tank, each with what lies across and up in its picture. */
enum Plane {
    /** Seen from above: the front pane at the bottom. */
    LEVEL,
    /** Seen through the front pane. */
    FRONT,
    /** Seen through the right pane: the front at the left. */
    SIDE;

    double across(Vec3 point) {
        return this == SIDE ? point.y() : point.x();
    }

    double up(Vec3 point) {
        return this == LEVEL ? point.y() : point.z();
    }

    /** Distance along the line of sight, on the axis that is cut. */
    double depth(Vec3 point) {
        return switch (this) {
            case LEVEL -> point.z();
            case FRONT -> point.y();
            case SIDE -> point.x();
        };
    }
}
