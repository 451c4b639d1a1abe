package slackwater.detritus;

import slackwater.field.Grid;
import slackwater.geometry.Vec3;

/**
 * A flat round thing in the water, in cells: a coral, which keeps what sinks onto it, or the mouth of a pump.
 *
 * @param centre in cells
 * @param facing unit vector
 * @param across half its width, in cells
 */
record Disc(Vec3 centre, Vec3 facing, double across) {
    static Disc of(Vec3 centreM, Vec3 facing, double acrossM, Grid grid) {
        return new Disc(centreM.times(1 / grid.cellSizeM()), facing.normalised(), acrossM / grid.cellSizeM());
    }

    /** How far a place is before the disc, in cells; below 0 behind it. */
    double before(double x, double y, double z) {
        return (x - centre.x()) * facing.x() + (y - centre.y()) * facing.y() + (z - centre.z()) * facing.z();
    }

    /** Distance of a place from the disc's axis, in cells. */
    double beside(double x, double y, double z) {
        double before = before(x, y, z);
        double dx = x - centre.x() - before * facing.x();
        double dy = y - centre.y() - before * facing.y();
        double dz = z - centre.z() - before * facing.z();
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** A point of the disc by the square root of its share of the area, 0..1, and an angle. */
    Vec3 point(double areaShare, double angleRad) {
        Vec3 other = Math.abs(facing.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
        Vec3 one = facing.cross(other).normalised();
        Vec3 two = facing.cross(one);
        double radius = across * Math.sqrt(areaShare);
        return centre.plus(one.times(radius * Math.cos(angleRad))).plus(two.times(radius * Math.sin(angleRad)));
    }
}
