package slackwater.geometry;

/**
 * A point or direction in the tank: x along the front from left to right, y from front to back, z up.
 * Points are in metres, directions have no unit.
 */
public record Vec3(double x, double y, double z) {
    public static final Vec3 ZERO = new Vec3(0, 0, 0);

    /**
     * The unit vector of an aim.
     *
     * @param yawRad angle about the vertical: 0 looks along +x, pi/2 to the back
     * @param pitchRad angle above the horizontal
     */
    public static Vec3 aim(double yawRad, double pitchRad) {
        double level = Math.cos(pitchRad);
        return new Vec3(level * Math.cos(yawRad), level * Math.sin(yawRad), Math.sin(pitchRad));
    }

    public Vec3 plus(Vec3 other) {
        return new Vec3(x + other.x, y + other.y, z + other.z);
    }

    public Vec3 minus(Vec3 other) {
        return new Vec3(x - other.x, y - other.y, z - other.z);
    }

    public Vec3 times(double factor) {
        return new Vec3(x * factor, y * factor, z * factor);
    }

    public double dot(Vec3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vec3 cross(Vec3 other) {
        return new Vec3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    /** This direction with length 1; the zero vector stays as it is. */
    public Vec3 normalised() {
        double length = length();
        return length == 0 ? this : times(1 / length);
    }
}
