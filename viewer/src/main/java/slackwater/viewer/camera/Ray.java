package slackwater.viewer.camera;

import slackwater.geometry.Vec3;

/** A straight line from a point, metres, in a direction of length 1. */
public record Ray(Vec3 fromM, Vec3 direction) {
    public Vec3 at(double distanceM) {
        return fromM.plus(direction.times(distanceM));
    }
}
