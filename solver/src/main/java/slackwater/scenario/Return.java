package slackwater.scenario;

import slackwater.geometry.Vec3;

/** The return from the sump: water that enters through a round nozzle. SI units; angles as for a pump. */
public record Return(double flowM3PerS, double nozzleM, Vec3 atM, double yawRad, double pitchRad) {
    public Vec3 aim() {
        return Vec3.aim(yawRad, pitchRad);
    }
}
