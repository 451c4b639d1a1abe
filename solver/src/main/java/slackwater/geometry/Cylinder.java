package slackwater.geometry;

/**
 * A round cylinder with flat ends; its signed distance is exact everywhere.
 *
 * @param base centre of one end, metres
 * @param direction unit vector from the base to the other end
 * @param heightM from end to end, metres; above 0
 * @param radiusM above 0
 */
public record Cylinder(Vec3 base, Vec3 direction, double heightM, double radiusM) implements Solid {
    public Cylinder {
        if (!(heightM > 0 && radiusM > 0 && Math.abs(direction.length() - 1) < 1e-9)) {
            throw new IllegalArgumentException("a cylinder must have a unit direction, a height and a radius: "
                    + direction + ", " + heightM + ", " + radiusM);
        }
    }

    @Override
    public double signedDistanceM(Vec3 point) {
        Vec3 offset = point.minus(base);
        double level = offset.dot(direction);
        double beside = offset.minus(direction.times(level)).length() - radiusM;
        double beyond = Math.max(-level, level - heightM);
        double outside = Math.hypot(Math.max(beside, 0), Math.max(beyond, 0));
        return outside > 0 ? outside : Math.max(beside, beyond);
    }

    @Override
    public Bounds bounds() {
        Vec3 reach = new Vec3(reach(direction.x()), reach(direction.y()), reach(direction.z()));
        Vec3 top = base.plus(direction.times(heightM));
        return new Bounds(base.minus(reach), base.plus(reach))
                .around(new Bounds(top.minus(reach), top.plus(reach)));
    }

    /** How far an end disc reaches in a direction whose cosine with the axis is given. */
    private double reach(double cosine) {
        return radiusM * Math.sqrt(Math.max(0, 1 - cosine * cosine));
    }
}
