package slackwater.viewer.shape;

import java.util.HashMap;
import java.util.Map;
import slackwater.geometry.Vec3;

/** A surface from loose triangles, smooth where they meet at a small angle. */
final class Facets {
    private static final int MOST_HALVINGS = 12;
    private final Floats points = new Floats();
    private final Map<Vec3, Vec3> sums = new HashMap<>();

    private Facets() {
    }

    /** @param trianglesM nine coordinates a triangle */
    static Surface of(double[] trianglesM, double edgeM) {
        Facets facets = new Facets();
        for (int n = 0; n < trianglesM.length; n += 9) {
            facets.split(point(trianglesM, n), point(trianglesM, n + 3), point(trianglesM, n + 6), edgeM,
                    MOST_HALVINGS);
        }
        return facets.surface();
    }

    private static Vec3 point(double[] from, int at) {
        return new Vec3((float) from[at], (float) from[at + 1], (float) from[at + 2]);
    }

    /** Halves the longest side until every side is short enough. */
    private void split(Vec3 a, Vec3 b, Vec3 c, double edgeM, int left) {
        double ab = b.minus(a).length();
        double bc = c.minus(b).length();
        double ca = a.minus(c).length();
        double longest = Math.max(ab, Math.max(bc, ca));
        if (longest <= edgeM || left == 0) {
            add(a, b, c);
        } else if (ab == longest) {
            Vec3 middle = a.plus(b).times(0.5);
            split(a, middle, c, edgeM, left - 1);
            split(middle, b, c, edgeM, left - 1);
        } else if (bc == longest) {
            split(b, c, a, edgeM, left);
        } else {
            split(c, a, b, edgeM, left);
        }
    }

    private void add(Vec3 a, Vec3 b, Vec3 c) {
        Vec3 area = b.minus(a).cross(c.minus(a));
        for (Vec3 corner : new Vec3[] {a, b, c}) {
            sums.merge(corner, area, Vec3::plus);
            points.add((float) corner.x());
            points.add((float) corner.y());
            points.add((float) corner.z());
        }
    }

    private Surface surface() {
        float[] places = points.array();
        float[] normals = new float[places.length];
        int[] corners = new int[places.length / 3];
        Map<Vec3, Vec3> rounded = new HashMap<>();
        sums.forEach((at, sum) -> rounded.merge(rounded(at), sum, Vec3::plus));
        for (int n = 0; n < corners.length; n++) {
            Vec3 at = new Vec3(places[3 * n], places[3 * n + 1], places[3 * n + 2]);
            Vec3 normal = rounded.get(at).normalised();
            normals[3 * n] = (float) normal.x();
            normals[3 * n + 1] = (float) normal.y();
            normals[3 * n + 2] = (float) normal.z();
            corners[n] = n;
        }
        return new Surface(places, normals, corners);
    }

    private static Vec3 rounded(Vec3 point) {
        return new Vec3((float) point.x(), (float) point.y(), (float) point.z());
    }
}
