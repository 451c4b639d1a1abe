package slackwater.geometry;

/**
 * Where a mesh came from and how it is set down in the tank: scaled, stood upright, turned about the vertical, and
 * moved until the middle of its base stands at {@code atM}.
 *
 * @param file the name in the scenario file, relative to it
 * @param unitM length of the file's unit, metres
 * @param yUp true where the file's y axis points up (as in glTF), false where z does
 * @param turnRad turn about the vertical, anticlockwise seen from above
 * @param atM where the middle of its base goes: the middle of its box in x and y, its lowest point in z; metres
 */
public record MeshPlacement(String file, double unitM, boolean yUp, double turnRad, Vec3 atM) {
    /** Metres and radians: numbers are written to a hundredth of a micrometre. */
    private static final double ROUNDING = 1e-7;

    /** Whether both are the same file set down alike, but for what writing a number as text rounds. */
    public boolean agrees(MeshPlacement other) {
        return file.equals(other.file) && unitM == other.unitM && yUp == other.yUp
                && Math.abs(turnRad - other.turnRad) < ROUNDING && atM.minus(other.atM).length() < ROUNDING;
    }

    /** The surface as it stands in the tank. */
    Triangles place(Triangles loose) {
        double[] turned = new double[loose.points().length];
        for (int at = 0; at < turned.length; at += 3) {
            Vec3 point = turned(loose.points()[at], loose.points()[at + 1], loose.points()[at + 2]);
            set(turned, at, point);
        }
        Bounds box = new Triangles(turned, loose.corners()).bounds();
        Vec3 base = new Vec3(box.centre().x(), box.centre().y(), box.low().z());
        for (int at = 0; at < turned.length; at += 3) {
            set(turned, at, new Vec3(turned[at], turned[at + 1], turned[at + 2]).minus(base).plus(atM));
        }
        return new Triangles(turned, loose.corners());
    }

    private Vec3 turned(double x, double y, double z) {
        Vec3 upright = (yUp ? new Vec3(x, -z, y) : new Vec3(x, y, z)).times(unitM);
        double cos = Math.cos(turnRad);
        double sin = Math.sin(turnRad);
        return new Vec3(cos * upright.x() - sin * upright.y(), sin * upright.x() + cos * upright.y(), upright.z());
    }

    private static void set(double[] points, int at, Vec3 point) {
        points[at] = point.x();
        points[at + 1] = point.y();
        points[at + 2] = point.z();
    }
}
