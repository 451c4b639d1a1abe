package slackwater.viewer.shape;

import java.util.List;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;

/**
 * A surface of triangles.
 *
 * @param points three coordinates a vertex, metres
 * @param normals three coordinates a vertex, of length 1
 * @param corners three vertex numbers a triangle, anticlockwise seen from outside
 */
public record Surface(float[] points, float[] normals, int[] corners) {
    private static final double SAME_M = 1e-5;
    public static final Surface EMPTY = new Surface(new float[0], new float[0], new int[0]);

    public Surface {
        if (points.length != normals.length || points.length % 3 != 0 || corners.length % 3 != 0) {
            throw new IllegalArgumentException("a surface must have three coordinates a point and a normal and three"
                    + " corners a triangle: " + points.length + ", " + normals.length + ", " + corners.length);
        }
    }

    public int vertexCount() {
        return points.length / 3;
    }

    public int triangleCount() {
        return corners.length / 3;
    }

    /** Sum of the triangles' areas, square metres. */
    public double areaM2() {
        double sum = 0;
        for (int n = 0; n < corners.length; n += 3) {
            double[] cross = cross(n);
            sum += Math.sqrt(cross[0] * cross[0] + cross[1] * cross[1] + cross[2] * cross[2]) / 2;
        }
        return sum;
    }

    /** Volume inside a closed surface, cubic metres (divergence theorem). */
    public double volumeM3() {
        double sum = 0;
        for (int n = 0; n < corners.length; n += 3) {
            int a = 3 * corners[n];
            double[] cross = cross(n);
            sum += (points[a] * cross[0] + points[a + 1] * cross[1] + points[a + 2] * cross[2]) / 6;
        }
        return sum;
    }

    /** Twice the area of a triangle, as a vector. */
    private double[] cross(int first) {
        int a = 3 * corners[first];
        int b = 3 * corners[first + 1];
        int c = 3 * corners[first + 2];
        double ux = (double) points[b] - points[a];
        double uy = (double) points[b + 1] - points[a + 1];
        double uz = (double) points[b + 2] - points[a + 2];
        double vx = (double) points[c] - points[a];
        double vy = (double) points[c + 1] - points[a + 1];
        double vz = (double) points[c + 2] - points[a + 2];
        return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
    }

    /** The same surface with whatever lies above a height pressed down to it, metres. */
    public Surface below(double heightM) {
        float[] lowered = points.clone();
        for (int n = 2; n < lowered.length; n += 3) {
            lowered[n] = (float) Math.min(lowered[n], heightM);
        }
        return new Surface(lowered, normals, corners);
    }

    /** The same surface with what ends at one corner of a box drawn out, or pressed back, to another one, metres. */
    public Surface stretched(Vec3 fromM, Vec3 toM) {
        double[] from = {fromM.x(), fromM.y(), fromM.z()};
        double[] to = {toM.x(), toM.y(), toM.z()};
        float[] drawn = points.clone();
        for (int n = 0; n < drawn.length; n++) {
            drawn[n] = drawn[n] > from[n % 3] - SAME_M ? (float) to[n % 3] : drawn[n];
        }
        return new Surface(drawn, normals, corners);
    }

    /** The same surface with whatever lies outside a box pressed onto its walls. */
    public Surface within(Bounds boxM) {
        float[] pressed = points.clone();
        double[] low = {boxM.low().x(), boxM.low().y(), boxM.low().z()};
        double[] high = {boxM.high().x(), boxM.high().y(), boxM.high().z()};
        for (int n = 0; n < pressed.length; n++) {
            pressed[n] = (float) Math.max(low[n % 3], Math.min(high[n % 3], pressed[n]));
        }
        return new Surface(pressed, normals, corners);
    }

    /** Several surfaces as one. */
    public static Surface joined(List<Surface> parts) {
        int vertices = parts.stream().mapToInt(Surface::vertexCount).sum();
        int triangles = parts.stream().mapToInt(Surface::triangleCount).sum();
        float[] points = new float[3 * vertices];
        float[] normals = new float[3 * vertices];
        int[] corners = new int[3 * triangles];
        int vertex = 0;
        int corner = 0;
        for (Surface part : parts) {
            System.arraycopy(part.points, 0, points, 3 * vertex, part.points.length);
            System.arraycopy(part.normals, 0, normals, 3 * vertex, part.normals.length);
            for (int n : part.corners) {
                corners[corner++] = n + vertex;
            }
            vertex += part.vertexCount();
        }
        return new Surface(points, normals, corners);
    }
}
