package slackwater.geometry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Triangles sorted into boxes within boxes, so that a question about one point touches few of them. */
final class TriangleTree {
    private static final int LEAF = 4;

    private sealed interface Node {
        Bounds bounds();
    }

    private record Leaf(Bounds bounds, List<Triangle> triangles) implements Node {
    }

    private record Fork(Bounds bounds, Node near, Node far) implements Node {
    }

    private record Item(Triangle triangle, Bounds bounds, Vec3 centre) {
        static Item of(Triangle triangle) {
            Bounds bounds = new Bounds(triangle.a(), triangle.a())
                    .around(new Bounds(triangle.b(), triangle.b()))
                    .around(new Bounds(triangle.c(), triangle.c()));
            return new Item(triangle, bounds, bounds.centre());
        }
    }

    private final Node root;

    TriangleTree(Triangles surface) {
        Item[] items = IntStream.range(0, surface.count())
                .mapToObj(i -> Item.of(new Triangle(surface.corner(i, 0), surface.corner(i, 1), surface.corner(i, 2))))
                .toArray(Item[]::new);
        root = built(items, 0, items.length);
    }

    Bounds bounds() {
        return root.bounds();
    }

    /** Distance from the point to the nearest triangle, metres. */
    double distance(Vec3 point) {
        return Math.sqrt(nearest(root, point, Double.POSITIVE_INFINITY));
    }

    /** How many more times a line straight up from the point leaves the body than enters it: above 0 only inside. */
    int winding(Vec3 point) {
        return winding(root, point);
    }

    private static Node built(Item[] items, int from, int to) {
        Bounds bounds = items[from].bounds();
        for (int i = from + 1; i < to; i++) {
            bounds = bounds.around(items[i].bounds());
        }
        if (to - from <= LEAF) {
            return new Leaf(bounds, IntStream.range(from, to).mapToObj(i -> items[i].triangle()).toList());
        }
        Arrays.sort(items, from, to, alongLongest(bounds.size()));
        int middle = (from + to) >>> 1;
        return new Fork(bounds, built(items, from, middle), built(items, middle, to));
    }

    private static Comparator<Item> alongLongest(Vec3 size) {
        if (size.x() >= size.y() && size.x() >= size.z()) {
            return Comparator.comparingDouble(item -> item.centre().x());
        }
        return size.y() >= size.z() ? Comparator.comparingDouble(item -> item.centre().y())
                : Comparator.comparingDouble(item -> item.centre().z());
    }

    private static double nearest(Node node, Vec3 point, double best) {
        if (squaredDistance(node.bounds(), point) >= best) {
            return best;
        }
        if (node instanceof Leaf leaf) {
            double least = best;
            for (Triangle triangle : leaf.triangles()) {
                least = Math.min(least, triangle.squaredDistance(point));
            }
            return least;
        }
        Fork fork = (Fork) node;
        boolean nearFirst = squaredDistance(fork.near().bounds(), point) <= squaredDistance(fork.far().bounds(), point);
        double first = nearest(nearFirst ? fork.near() : fork.far(), point, best);
        return nearest(nearFirst ? fork.far() : fork.near(), point, first);
    }

    private static int winding(Node node, Vec3 point) {
        Bounds box = node.bounds();
        if (point.x() < box.low().x() || point.x() > box.high().x() || point.y() < box.low().y()
                || point.y() > box.high().y() || point.z() > box.high().z()) {
            return 0;
        }
        if (node instanceof Leaf leaf) {
            int sum = 0;
            for (Triangle triangle : leaf.triangles()) {
                sum += triangle.crossing(point);
            }
            return sum;
        }
        Fork fork = (Fork) node;
        return winding(fork.near(), point) + winding(fork.far(), point);
    }

    private static double squaredDistance(Bounds box, Vec3 point) {
        double x = Math.max(0, Math.max(box.low().x() - point.x(), point.x() - box.high().x()));
        double y = Math.max(0, Math.max(box.low().y() - point.y(), point.y() - box.high().y()));
        double z = Math.max(0, Math.max(box.low().z() - point.z(), point.z() - box.high().z()));
        return x * x + y * y + z * z;
    }
}
