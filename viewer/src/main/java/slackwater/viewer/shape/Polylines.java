package slackwater.viewer.shape;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Vec3;

/**
 * Lines through points in space.
 *
 * @param points three coordinates a point, metres, line after line
 * @param values one number a point, such as the speed there; its meaning is the maker's
 * @param starts number of each line's first point, and after the last line the number of all points
 */
public record Polylines(float[] points, float[] values, int[] starts) {
    public Polylines {
        if (points.length != 3 * values.length || starts.length == 0 || starts[starts.length - 1] != values.length) {
            throw new IllegalArgumentException("lines must have three coordinates and one value a point and end with"
                    + " the last: " + points.length + ", " + values.length);
        }
    }

    public int lineCount() {
        return starts.length - 1;
    }

    public int pointCount() {
        return values.length;
    }

    /** Length of one line, metres. */
    public double lengthM(int line) {
        double sum = 0;
        for (int n = starts[line] + 1; n < starts[line + 1]; n++) {
            sum += Math.sqrt(square(points[3 * n] - points[3 * n - 3]) + square(points[3 * n + 1] - points[3 * n - 2])
                    + square(points[3 * n + 2] - points[3 * n - 1]));
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }

    /** Straight lines from corner to corner, all with the value 0. */
    public static Polylines of(List<List<Vec3>> lines) {
        Collector collector = new Collector();
        for (List<Vec3> line : lines) {
            line.forEach(point -> collector.add((float) point.x(), (float) point.y(), (float) point.z(), 0));
            collector.endLine();
        }
        return collector.lines();
    }

    /** Puts lines together point by point. */
    public static final class Collector {
        private final Floats points = new Floats();
        private final Floats values = new Floats();
        private final List<Integer> starts = new ArrayList<>(List.of(0));

        /** Another point of the line, metres, with its value. */
        public void add(float x, float y, float z, float value) {
            points.add(x);
            points.add(y);
            points.add(z);
            values.add(value);
        }

        /** The line is complete; one of fewer than two points counts as a dot. */
        public void endLine() {
            if (starts.get(starts.size() - 1) < values.size()) {
                starts.add(values.size());
            }
        }

        public Polylines lines() {
            endLine();
            return new Polylines(points.array(), values.array(), starts.stream().mapToInt(n -> n).toArray());
        }
    }
}
