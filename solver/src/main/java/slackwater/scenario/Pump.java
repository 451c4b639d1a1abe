package slackwater.scenario;

import slackwater.geometry.Vec3;

/**
 * A circulation pump as the user describes it.
 *
 * @param flowM3PerS the maker's figure at full output, cubic metres per second
 * @param outlet its opening
 * @param atM centre of the outlet, metres
 * @param yawRad aim about the vertical: 0 looks along +x, pi/2 to the back
 * @param pitchRad aim above the horizontal
 * @param rollRad turn of a slot outlet about the aim; 0 keeps its width level
 * @param outputFraction set output, 0..1; flow goes in proportion
 * @param foulingFraction share of the flow lost to dirt, 0..1
 * @param thrustFactor jet momentum over rho Q^2/A: 1 for a nozzle, up to 2 for an open propeller
 * @param pattern change with time
 */
public record Pump(String name, double flowM3PerS, Outlet outlet, Vec3 atM, double yawRad, double pitchRad,
                   double rollRad, double outputFraction, double foulingFraction, double thrustFactor,
                   Pattern pattern) {
    public Vec3 aim() {
        return Vec3.aim(yawRad, pitchRad);
    }
}
