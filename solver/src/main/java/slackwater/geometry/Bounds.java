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
}
