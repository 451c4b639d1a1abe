package slackwater.geometry;

/**
 * An ellipsoid with its axes along the tank's. The sign of its signed distance is exact; the magnitude is that of the
 * first-order estimate f / |grad f|: exact for a sphere, right to first order near any surface, and between
 * (least radius / greatest radius) and (greatest / least) of the true distance elsewhere.
 *
 * @param centre metres
 * @param radii half its length in each direction, metres; above 0
 */
public record Ellipsoid(Vec3 centre, Vec3 radii) implements Solid {
    public Ellipsoid {
        if (!(radii.x() > 0 && radii.y() > 0 && radii.z() > 0)) {
            throw new IllegalArgumentException("the radii of an ellipsoid must be above 0: " + radii);
        }
    }

    @Override
    public double signedDistanceM(Vec3 point) {
        Vec3 offset = point.minus(centre);
        Vec3 scaled = over(offset, radii);
        double level = scaled.length();
        double slope = over(scaled, radii).length();
        return slope == 0 ? -leastRadius() : level * (level - 1) / slope;
    }

    @Override
    public Bounds bounds() {
        return new Bounds(centre.minus(radii), centre.plus(radii));
    }

    private double leastRadius() {
        return Math.min(radii.x(), Math.min(radii.y(), radii.z()));
    }

    private static Vec3 over(Vec3 a, Vec3 b) {
        return new Vec3(a.x() / b.x(), a.y() / b.y(), a.z() / b.z());
    }
}
