package slackwater.viewer.edit;

import slackwater.geometry.Box;
import slackwater.geometry.Cylinder;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Mesh;
import slackwater.geometry.Solid;
import slackwater.geometry.Vec3;

/** Rocks moved and resized. A mesh moves by its placement; it keeps its size. */
final class Shapes {
    private static final double LEAST_M = 0.01;
    private static final double MOST_M = 2;

    private Shapes() {
    }

    static Solid moved(Solid solid, Vec3 byM) {
        if (solid instanceof Box box) {
            return new Box(box.low().plus(byM), box.high().plus(byM));
        }
        if (solid instanceof Ellipsoid ellipsoid) {
            return new Ellipsoid(ellipsoid.centre().plus(byM), ellipsoid.radii());
        }
        if (solid instanceof Cylinder cylinder) {
            return new Cylinder(cylinder.base().plus(byM), cylinder.direction(), cylinder.heightM(),
                    cylinder.radiusM());
        }
        return solid instanceof Mesh mesh ? mesh.moved(byM) : solid;
    }

    /** About the middle of its base, so that it stays where it stands. */
    static Solid resized(Solid solid, double factor) {
        Vec3 size = solid.bounds().size();
        double least = Math.min(size.x(), Math.min(size.y(), size.z()));
        double most = Math.max(size.x(), Math.max(size.y(), size.z()));
        if (least * factor < LEAST_M || most * factor > MOST_M) {
            return solid;
        }
        Vec3 middle = solid.bounds().centre();
        Vec3 base = new Vec3(middle.x(), middle.y(), solid.bounds().low().z());
        if (solid instanceof Box box) {
            return new Box(about(base, box.low(), factor), about(base, box.high(), factor));
        }
        if (solid instanceof Ellipsoid ellipsoid) {
            return new Ellipsoid(about(base, ellipsoid.centre(), factor), ellipsoid.radii().times(factor));
        }
        if (solid instanceof Cylinder cylinder) {
            return new Cylinder(about(base, cylinder.base(), factor), cylinder.direction(),
                    cylinder.heightM() * factor, cylinder.radiusM() * factor);
        }
        return solid;
    }

    /** From ellipsoid to box to upright cylinder and round again, in the same box. */
    static Solid next(Solid solid) {
        Vec3 low = solid.bounds().low();
        Vec3 size = solid.bounds().size();
        if (solid instanceof Ellipsoid) {
            return new Box(low, low.plus(size));
        }
        if (solid instanceof Box) {
            return new Cylinder(new Vec3(low.x() + size.x() / 2, low.y() + size.y() / 2, low.z()), new Vec3(0, 0, 1),
                    size.z(), Math.min(size.x(), size.y()) / 2);
        }
        return solid instanceof Cylinder ? new Ellipsoid(solid.bounds().centre(), size.times(0.5)) : solid;
    }

    private static Vec3 about(Vec3 middle, Vec3 point, double factor) {
        return middle.plus(point.minus(middle).times(factor));
    }
}
