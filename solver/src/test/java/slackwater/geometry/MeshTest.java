package slackwater.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;

class MeshTest {
    private static final MeshPlacement AS_IT_IS = new MeshPlacement("test", 1, false, 0, new Vec3(0, 0, -1));

    @Test
    void aFineBallOfTrianglesIsASphere() throws MeshFault {
        Mesh ball = new Mesh(AS_IT_IS, IcoSphere.of(4, p -> p));
        Ellipsoid sphere = new Ellipsoid(Vec3.ZERO, new Vec3(1, 1, 1));
        double dip = 1 - nearestFacePlane(ball);
        assertTrue(dip < 0.002);
        ForAll.seeds(3000, random -> {
            Vec3 p = SolidTest.point(random, 1.6);
            assertEquals(sphere.signedDistanceM(p), ball.signedDistanceM(p), dip + 1e-12);
        });
        // Wholly within a shell of this thickness, the volume can miss no more than the shell's.
        assertEquals(4 * Math.PI / 3, ball.volumeM3(), 3 * dip * 4 * Math.PI / 3);
    }

    /** The tree against every triangle one by one, and the winding against Van Oosterom and Strackee's solid angles. */
    @Test
    void theTreeAnswersAsEveryTriangleTogetherWould() throws MeshFault {
        Triangles lumpy = IcoSphere.of(2, p -> p.times(1 + 0.4 * Math.sin(5 * p.x()) * Math.cos(7 * p.y() + p.z())));
        Mesh mesh = new Mesh(new MeshPlacement("test", 1, false, 0, new Vec3(0, 0, lumpy.bounds().low().z())), lumpy);
        double[] corners = mesh.trianglesM();
        ForAll.seeds(500, random -> {
            Vec3 p = SolidTest.point(random, 1.5);
            double nearest = IntStream.range(0, corners.length / 9)
                    .mapToDouble(i -> triangle(corners, i).squaredDistance(p)).min().orElseThrow();
            assertEquals(Math.sqrt(nearest), Math.abs(mesh.signedDistanceM(p)), 1e-12);
            double turns = IntStream.range(0, corners.length / 9)
                    .mapToDouble(i -> solidAngle(triangle(corners, i), p)).sum() / (4 * Math.PI);
            assertEquals(Math.round(turns) != 0, mesh.contains(p));
        });
    }

    /** Lines through shared corners and edges, and along upright faces: the cases where a careless count goes wrong. */
    @Test
    void aCubeOfTrianglesIsABoxEvenOnAGridThroughItsEdges() throws MeshFault {
        Mesh cube = new Mesh(new MeshPlacement("test", 1, false, 0, new Vec3(2, 2, 0)), cube());
        Box box = new Box(Vec3.ZERO, new Vec3(4, 4, 4));
        for (int i = -4; i <= 20; i++) {
            for (int j = -4; j <= 20; j++) {
                for (int k = -4; k <= 20; k++) {
                    Vec3 p = new Vec3(i / 4.0, j / 4.0, k / 4.0);
                    assertEquals(box.signedDistanceM(p), cube.signedDistanceM(p) + 0.0, 1e-12, p::toString);
                }
            }
        }
    }

    @Test
    void placingTurnsScalesAndSetsDownTheBase() throws MeshFault {
        Triangles brick = new Triangles(Arrays.stream(cube().points()).map(c -> c + 7).toArray(), cube().corners());
        Mesh mesh = new Mesh(new MeshPlacement("test", 0.01, true, Math.PI / 2, new Vec3(0.5, 0.4, 0.1)), brick);
        assertEquals(0.48, mesh.bounds().low().x(), 1e-12);
        assertEquals(0.38, mesh.bounds().low().y(), 1e-12);
        assertEquals(0.1, mesh.bounds().low().z(), 1e-12);
        assertEquals(0.14, mesh.bounds().high().z(), 1e-12);
        assertTrue(mesh.contains(new Vec3(0.5, 0.4, 0.12)));
    }

    /** Moved a little and a little more, it is the one that was set down there at once. */
    @Test
    void aMovedMeshIsTheMeshSetDownThere() throws MeshFault {
        Triangles ball = IcoSphere.of(2, p -> p.times(1 + 0.3 * Math.sin(4 * p.x())));
        Mesh there = new Mesh(new MeshPlacement("test", 0.1, false, 0.4, new Vec3(0.5, 0.4, 0.1)), ball);
        Mesh moved = new Mesh(new MeshPlacement("test", 0.1, false, 0.4, new Vec3(0.2, 0.1, 0)), ball)
                .moved(new Vec3(0.1, 0.3, 0)).moved(new Vec3(0.2, 0, 0.1));
        assertTrue(moved.placement().agrees(there.placement()));
        assertEquals(0, moved.bounds().low().minus(there.bounds().low()).length(), 1e-12);
        assertEquals(0, moved.bounds().high().minus(there.bounds().high()).length(), 1e-12);
        ForAll.seeds(300, random -> {
            Vec3 p = there.bounds().centre().plus(SolidTest.point(random, 0.3));
            assertEquals(there.signedDistanceM(p), moved.signedDistanceM(p), 1e-12);
        });
        for (int n = 0; n < there.trianglesM().length; n++) {
            assertEquals(there.trianglesM()[n], moved.trianglesM()[n], 1e-12);
        }
    }

    @Test
    void aBallInsideOutHoldsTheSamePoints() throws MeshFault {
        Triangles ball = IcoSphere.of(1, p -> p);
        int[] reversed = IntStream.range(0, ball.corners().length)
                .map(i -> ball.corners()[ball.corners().length - 1 - i]).toArray();
        Mesh mesh = new Mesh(AS_IT_IS, new Triangles(ball.points(), reversed));
        assertTrue(mesh.contains(Vec3.ZERO));
        assertFalse(mesh.contains(new Vec3(2, 0, 0)));
    }

    @Test
    void brokenSurfacesAreRefusedInPlainWords() {
        Triangles cube = cube();
        int[] holed = Arrays.copyOf(cube.corners(), cube.corners().length - 3);
        assertSays("is open: 3 edges", new Triangles(cube.points(), holed));
        assertSays("holds no triangles", new Triangles(new double[9], new int[] {0, 1, 2}));
        assertSays("holds no triangles", new Triangles(new double[0], new int[0]));
        double[] nan = cube.points().clone();
        nan[4] = Double.NaN;
        assertSays("is not a number", new Triangles(nan, cube.corners()));
        assertSays("encloses no volume", new Triangles(new double[] {0, 0, 0, 1, 0, 0, 0, 1, 0},
                new int[] {0, 1, 2, 0, 2, 1}));
        assertSays("has 500001 triangles, must have at most 500000", new Triangles(cube.points(),
                IntStream.range(0, 3 * 500_001).map(i -> i % 3).toArray()));
        int[] oneTurned = cube.corners().clone();
        oneTurned[0] = cube.corners()[1];
        oneTurned[1] = cube.corners()[0];
        assertSays("is open: 3 edges", new Triangles(cube.points(), oneTurned));
    }

    @Test
    void joiningMakesSeparateTrianglesOneSurface() {
        Triangles ball = IcoSphere.of(2, p -> p);
        double[] loose = new double[3 * ball.corners().length];
        for (int i = 0; i < ball.corners().length; i++) {
            System.arraycopy(ball.points(), 3 * ball.corners()[i], loose, 3 * i, 3);
        }
        Triangles joined = new Triangles(loose, IntStream.range(0, ball.corners().length).toArray()).joined();
        assertEquals(ball.points().length, joined.points().length);
        assertEquals(0, joined.openEdges());
        assertArrayEquals(joined.points(), joined.joined().points());
    }

    /** How near to the origin the plane of a face comes: no point of a ball of triangles lies deeper. */
    private static double nearestFacePlane(Mesh ball) {
        return IntStream.range(0, ball.triangleCount()).mapToObj(i -> triangle(ball.trianglesM(), i))
                .mapToDouble(t -> t.a().dot(t.b().minus(t.a()).cross(t.c().minus(t.a())).normalised()))
                .min().orElseThrow();
    }

    private static void assertSays(String words, Triangles surface) {
        MeshFault fault = assertThrows(MeshFault.class, () -> new Mesh(AS_IT_IS, surface));
        assertTrue(fault.getMessage().contains(words), fault.getMessage());
    }

    static Triangles cube() {
        double[] points = new double[24];
        for (int i = 0; i < 8; i++) {
            points[3 * i] = 4 * (i & 1);
            points[3 * i + 1] = 4 * (i >> 1 & 1);
            points[3 * i + 2] = 4 * (i >> 2);
        }
        return new Triangles(points, new int[] {0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4,
            2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5});
    }

    private static Triangle triangle(double[] c, int i) {
        return new Triangle(new Vec3(c[9 * i], c[9 * i + 1], c[9 * i + 2]),
                new Vec3(c[9 * i + 3], c[9 * i + 4], c[9 * i + 5]), new Vec3(c[9 * i + 6], c[9 * i + 7], c[9 * i + 8]));
    }

    /** Van Oosterom and Strackee 1983, IEEE Transactions on Biomedical Engineering 30, 125-126. */
    private static double solidAngle(Triangle triangle, Vec3 p) {
        Vec3 a = triangle.a().minus(p);
        Vec3 b = triangle.b().minus(p);
        Vec3 c = triangle.c().minus(p);
        double below = a.length() * b.length() * c.length() + a.dot(b) * c.length() + b.dot(c) * a.length()
                + c.dot(a) * b.length();
        return 2 * Math.atan2(a.dot(b.cross(c)), below);
    }
}
