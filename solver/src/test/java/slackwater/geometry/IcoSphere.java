package slackwater.geometry;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;

/** A ball of triangles, made from an icosahedron by halving its edges: for tests, and to make the example rock from. */
public final class IcoSphere {
    private final List<Vec3> points = new ArrayList<>();
    private List<int[]> faces = new ArrayList<>();

    private IcoSphere() {
        double t = (1 + Math.sqrt(5)) / 2;
        for (double[] p : new double[][] {{-1, t, 0}, {1, t, 0}, {-1, -t, 0}, {1, -t, 0}, {0, -1, t}, {0, 1, t},
            {0, -1, -t}, {0, 1, -t}, {t, 0, -1}, {t, 0, 1}, {-t, 0, -1}, {-t, 0, 1}}) {
            points.add(new Vec3(p[0], p[1], p[2]).normalised());
        }
        int[][] corners = {{0, 11, 5}, {0, 5, 1}, {0, 1, 7}, {0, 7, 10}, {0, 10, 11}, {1, 5, 9}, {5, 11, 4},
            {11, 10, 2}, {10, 7, 6}, {7, 1, 8}, {3, 9, 4}, {3, 4, 2}, {3, 2, 6}, {3, 6, 8}, {3, 8, 9}, {4, 9, 5},
            {2, 4, 11}, {6, 2, 10}, {8, 6, 7}, {9, 8, 1}};
        faces.addAll(List.of(corners));
    }

    /** A unit ball about the origin of 20 * 4^halvings triangles, each vertex then moved. */
    static Triangles of(int halvings, UnaryOperator<Vec3> move) {
        IcoSphere ball = new IcoSphere();
        for (int i = 0; i < halvings; i++) {
            ball.halve();
        }
        double[] places = ball.points.stream().map(move)
                .flatMapToDouble(p -> DoubleStream.of(p.x(), p.y(), p.z())).toArray();
        return new Triangles(places, ball.faces.stream().flatMapToInt(Arrays::stream).toArray());
    }

    private void halve() {
        Map<Long, Integer> middles = new HashMap<>();
        List<int[]> finer = new ArrayList<>();
        for (int[] f : faces) {
            int ab = middle(f[0], f[1], middles);
            int bc = middle(f[1], f[2], middles);
            int ca = middle(f[2], f[0], middles);
            finer.addAll(List.of(new int[] {f[0], ab, ca}, new int[] {f[1], bc, ab}, new int[] {f[2], ca, bc},
                    new int[] {ab, bc, ca}));
        }
        faces = finer;
    }

    private int middle(int a, int b, Map<Long, Integer> middles) {
        long edge = (long) Math.min(a, b) << 32 | Math.max(a, b);
        return middles.computeIfAbsent(edge, fresh -> {
            points.add(points.get(a).plus(points.get(b)).normalised());
            return points.size() - 1;
        });
    }

    /** The surface as a binary .stl file. */
    public static byte[] stl(Triangles surface) {
        ByteBuffer file = ByteBuffer.allocate(84 + 50 * surface.count()).order(ByteOrder.LITTLE_ENDIAN);
        file.put("Invented example".getBytes(StandardCharsets.US_ASCII));
        file.putInt(80, surface.count()).position(84);
        for (int face = 0; face < surface.count(); face++) {
            put(file, Vec3.ZERO);
            for (int corner = 0; corner < 3; corner++) {
                put(file, surface.corner(face, corner));
            }
            file.putShort((short) 0);
        }
        return file.array();
    }

    private static void put(ByteBuffer file, Vec3 p) {
        file.putFloat((float) p.x()).putFloat((float) p.y()).putFloat((float) p.z());
    }
}
