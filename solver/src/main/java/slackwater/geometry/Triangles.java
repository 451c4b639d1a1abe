package slackwater.geometry;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * A surface of triangles that share their vertices.
 *
 * @param points three coordinates a vertex, metres
 * @param corners three vertex numbers a triangle, anticlockwise seen from outside
 */
record Triangles(double[] points, int[] corners) {
    int count() {
        return corners.length / 3;
    }

    Vec3 corner(int triangle, int which) {
        int at = 3 * corners[3 * triangle + which];
        return new Vec3(points[at], points[at + 1], points[at + 2]);
    }

    /** The same surface with vertices at equal places made one, and triangles without area between them left out. */
    Triangles joined() {
        Map<Vec3, Integer> numbers = new HashMap<>();
        double[] places = new double[points.length];
        int[] renumbered = new int[points.length / 3];
        for (int vertex = 0; vertex < renumbered.length; vertex++) {
            // Adding 0.0 turns -0.0 into 0.0, which a record would hold apart.
            Vec3 place = new Vec3(points[3 * vertex] + 0.0, points[3 * vertex + 1] + 0.0, points[3 * vertex + 2] + 0.0);
            int number = numbers.computeIfAbsent(place, fresh -> numbers.size());
            places[3 * number] = place.x();
            places[3 * number + 1] = place.y();
            places[3 * number + 2] = place.z();
            renumbered[vertex] = number;
        }
        return new Triangles(Arrays.copyOf(places, 3 * numbers.size()), withoutSlivers(renumbered));
    }

    private int[] withoutSlivers(int[] renumbered) {
        int[] kept = new int[corners.length];
        int length = 0;
        for (int first = 0; first < corners.length; first += 3) {
            int a = renumbered[corners[first]];
            int b = renumbered[corners[first + 1]];
            int c = renumbered[corners[first + 2]];
            if (a != b && b != c && c != a) {
                kept[length++] = a;
                kept[length++] = b;
                kept[length++] = c;
            }
        }
        return Arrays.copyOf(kept, length);
    }

    /** How many edges are not used exactly once in each direction: 0 for a closed, consistently turned surface. */
    int openEdges() {
        Map<Long, int[]> uses = new HashMap<>(2 * corners.length);
        for (int first = 0; first < corners.length; first += 3) {
            for (int side = 0; side < 3; side++) {
                int from = corners[first + side];
                int to = corners[first + (side + 1) % 3];
                long edge = (long) Math.min(from, to) << Integer.SIZE | Math.max(from, to);
                uses.computeIfAbsent(edge, fresh -> new int[2])[from < to ? 0 : 1]++;
            }
        }
        return (int) uses.values().stream().filter(use -> use[0] != 1 || use[1] != 1).count();
    }

    /** Volume inside a closed surface, cubic metres; negative where it is turned inside out. */
    double volumeM3() {
        double sixfold = 0;
        for (int triangle = 0; triangle < count(); triangle++) {
            sixfold += corner(triangle, 0).dot(corner(triangle, 1).cross(corner(triangle, 2)));
        }
        return sixfold / 6;
    }

    Bounds bounds() {
        Vec3 low = corner(0, 0);
        Bounds bounds = new Bounds(low, low);
        for (int at = 0; at < points.length; at += 3) {
            Vec3 point = new Vec3(points[at], points[at + 1], points[at + 2]);
            bounds = bounds.around(new Bounds(point, point));
        }
        return bounds;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Triangles same && Arrays.equals(points, same.points)
                && Arrays.equals(corners, same.corners);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(points) + Arrays.hashCode(corners);
    }

    @Override
    public String toString() {
        return count() + " triangles";
    }
}
