package slackwater.geometry;

/**
 * A box along the axes; its signed distance is exact everywhere.
 *
 * @param low its corner nearest to the origin, metres
 * @param high the opposite corner, metres; greater than {@code low} in every direction
 */
public record Box(Vec3 low, Vec3 high) implements Solid {
    public Box {
        if (!(low.x() < high.x() && low.y() < high.y() && low.z() < high.z())) {
            throw new IllegalArgumentException("the low corner of a box must be below its high corner: "
                    + low + ", " + high);
        }
    }

    @Override
    public double signedDistanceM(Vec3 point) {
        double x = Math.max(low.x() - point.x(), point.x() - high.x());
        double y = Math.max(low.y() - point.y(), point.y() - high.y());
        double z = Math.max(low.z() - point.z(), point.z() - high.z());
        double outside = new Vec3(Math.max(x, 0), Math.max(y, 0), Math.max(z, 0)).length();
        return outside > 0 ? outside : Math.max(x, Math.max(y, z));
    }

    @Override
    public Bounds bounds() {
        return new Bounds(low, high);
    }
}
