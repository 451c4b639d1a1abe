package slackwater.viewer.shape;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Box;
import slackwater.geometry.Cylinder;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Mesh;
import slackwater.geometry.Solid;
import slackwater.geometry.Union;
import slackwater.geometry.Vec3;

/** Surfaces of the solids that a scenario is made of, in triangles with edges of about a given length. */
public final class Solids {
    private Solids() {
    }

    /** @param edgeM longest edge of a triangle, metres; a mesh keeps its triangles, halved until they are so small */
    public static Surface of(Solid solid, double edgeM) {
        if (solid instanceof Box box) {
            return box(box.low(), box.high(), edgeM);
        }
        if (solid instanceof Ellipsoid ellipsoid) {
            return ellipsoid(ellipsoid.centre(), ellipsoid.radii(), edgeM);
        }
        if (solid instanceof Cylinder cylinder) {
            return Turned.cylinder(cylinder.base(), cylinder.direction(), cylinder.heightM(), cylinder.radiusM(),
                    edgeM);
        }
        if (solid instanceof Mesh mesh) {
            return Facets.of(mesh.trianglesM(), edgeM);
        }
        return Surface.joined(((Union) solid).parts().stream().map(part -> of(part, edgeM)).toList());
    }

    /** A box along the axes. */
    public static Surface box(Vec3 low, Vec3 high, double edgeM) {
        Vec3 size = high.minus(low);
        Vec3 x = new Vec3(size.x(), 0, 0);
        Vec3 y = new Vec3(0, size.y(), 0);
        Vec3 z = new Vec3(0, 0, size.z());
        List<Surface> faces = new ArrayList<>();
        faces.add(rectangle(low, y, x, edgeM));
        faces.add(rectangle(low, x, z, edgeM));
        faces.add(rectangle(low, z, y, edgeM));
        faces.add(rectangle(high, x.times(-1), y.times(-1), edgeM));
        faces.add(rectangle(high, z.times(-1), x.times(-1), edgeM));
        faces.add(rectangle(high, y.times(-1), z.times(-1), edgeM));
        return Surface.joined(faces);
    }

    /** A rectangle from a corner along two sides; its outside is the side of first x second. */
    public static Surface rectangle(Vec3 corner, Vec3 first, Vec3 second, double edgeM) {
        int columns = Math.max(1, (int) Math.ceil(first.length() / edgeM));
        int rows = Math.max(1, (int) Math.ceil(second.length() / edgeM));
        Vec3 normal = first.cross(second).normalised();
        Net net = new Net(columns, rows);
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= columns; column++) {
                net.add(corner.plus(first.times((double) column / columns)).plus(second.times((double) row / rows)),
                        normal);
            }
        }
        return net.surface();
    }

    /** An ellipsoid along the axes. */
    public static Surface ellipsoid(Vec3 centre, Vec3 radii, double edgeM) {
        double greatest = Math.max(radii.x(), Math.max(radii.y(), radii.z()));
        int rows = Math.max(8, (int) Math.ceil(Math.PI * greatest / edgeM));
        int columns = 2 * rows;
        Net net = new Net(columns, rows);
        for (int row = 0; row <= rows; row++) {
            double height = -Math.PI / 2 + Math.PI * row / rows;
            for (int column = 0; column <= columns; column++) {
                Vec3 unit = Vec3.aim(2 * Math.PI * column / columns, height);
                Vec3 slope = new Vec3(unit.x() / radii.x(), unit.y() / radii.y(), unit.z() / radii.z());
                net.add(centre.plus(new Vec3(unit.x() * radii.x(), unit.y() * radii.y(), unit.z() * radii.z())),
                        slope.normalised());
            }
        }
        return net.surface();
    }
}
