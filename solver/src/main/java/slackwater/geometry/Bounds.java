package slackwater.geometry;

/** An axis-aligned box, metres: what surely holds a solid. */
public record Bounds(Vec3 low, Vec3 high) {
    public boolean contains(Vec3 point) {
        return point.x() >= low.x() && point.x() <= high.x()
                && point.y() >= low.y() && point.y() <= high.y()
                && point.z() >= low.z() && point.z() <= high.z();
    }

    public Vec3 centre() {
        return low.plus(high).times(0.5);
    }

    public Vec3 size() {
        return high.minus(low);
    }

    /** The least box that holds this one and the other. */
    public Bounds around(Bounds other) {
        return new Bounds(
                new Vec3(Math.min(low.x(), other.low.x()), Math.min(low.y(), other.low.y()),
                        Math.min(low.z(), other.low.z())),
                new Vec3(Math.max(high.x(), other.high.x()), Math.max(high.y(), other.high.y()),
                        Math.max(high.z(), other.high.z())));
    }

    /** True where the two boxes share some volume. */
    public boolean overlaps(Bounds other) {
        return low.x() < other.high.x() && other.low.x() < high.x()
                && low.y() < other.high.y() && other.low.y() < high.y()
                && low.z() < other.high.z() && other.low.z() < high.z();
    }
}
