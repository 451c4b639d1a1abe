package slackwater.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;

class SolidTest {
    @Test
    void boxDistancesAreTheTextbookOnes() {
        Box box = new Box(Vec3.ZERO, new Vec3(2, 4, 6));
        assertEquals(-1, box.signedDistanceM(new Vec3(1, 2, 3)));
        assertEquals(5, box.signedDistanceM(new Vec3(5, 8, 3)));
        assertEquals(0, box.signedDistanceM(new Vec3(2, 1, 1)));
    }

    @Test
    void cylinderDistancesAreTheTextbookOnes() {
        Cylinder lying = new Cylinder(Vec3.ZERO, new Vec3(1, 0, 0), 10, 2);
        assertEquals(-2, lying.signedDistanceM(new Vec3(5, 0, 0)));
        assertEquals(5, lying.signedDistanceM(new Vec3(13, 0, 6)));
        assertEquals(new Bounds(new Vec3(0, -2, -2), new Vec3(10, 2, 2)), lying.bounds());
    }

    @Test
    void everyShapeLiesInItsBoundsAndIsInsideWhereNegative() {
        ForAll.seeds(300, random -> {
            Solid solid = solid(random);
            for (int i = 0; i < 50; i++) {
                Vec3 point = point(random, 3);
                assertEquals(solid.signedDistanceM(point) < 0, solid.contains(point));
                assertTrue(!solid.contains(point) || solid.bounds().contains(point), () -> solid + " " + point);
            }
        });
    }

    /** No distance may change faster than the point moves: exact for boxes and cylinders. */
    @Test
    void boxAndCylinderDistancesAreNoSteeperThanOne() {
        ForAll.seeds(300, random -> {
            Solid solid = random.nextBoolean() ? box(random) : cylinder(random);
            Vec3 a = point(random, 3);
            Vec3 b = a.plus(point(random, 0.3));
            assertTrue(Math.abs(solid.signedDistanceM(a) - solid.signedDistanceM(b)) <= b.minus(a).length() + 1e-12);
        });
    }

    @Test
    void ellipsoidHasTheExactSignAndIsExactForASphere() {
        Ellipsoid sphere = new Ellipsoid(new Vec3(1, 1, 1), new Vec3(2, 2, 2));
        Ellipsoid flat = new Ellipsoid(Vec3.ZERO, new Vec3(3, 2, 1));
        assertEquals(-1, flat.signedDistanceM(Vec3.ZERO));
        ForAll.seeds(500, random -> {
            Vec3 p = point(random, 4);
            assertEquals(p.minus(sphere.centre()).length() - 2, sphere.signedDistanceM(p), 1e-12);
            double level = p.x() * p.x() / 9 + p.y() * p.y() / 4 + p.z() * p.z() - 1;
            assertEquals(Math.signum(level), Math.signum(flat.signedDistanceM(p)));
        });
    }

    @Test
    void aUnionHoldsWhatItsPartsHold() {
        ForAll.seeds(200, random -> {
            Solid a = box(random);
            Solid b = cylinder(random);
            Union both = new Union(List.of(a, b));
            Vec3 p = point(random, 3);
            assertEquals(a.contains(p) || b.contains(p), both.contains(p));
            assertEquals(Math.min(a.signedDistanceM(p), b.signedDistanceM(p)), both.signedDistanceM(p));
        });
    }

    private static Solid solid(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> box(random);
            case 1 -> cylinder(random);
            default -> new Ellipsoid(point(random, 1), size(random));
        };
    }

    private static Box box(Random random) {
        Vec3 low = point(random, 1);
        return new Box(low, low.plus(size(random)));
    }

    private static Cylinder cylinder(Random random) {
        return new Cylinder(point(random, 1), point(random, 1).normalised(), size(random).x(), size(random).y());
    }

    static Vec3 point(Random random, double reach) {
        return new Vec3(reach * (2 * random.nextDouble() - 1), reach * (2 * random.nextDouble() - 1),
                reach * (2 * random.nextDouble() - 1));
    }

    private static Vec3 size(Random random) {
        return new Vec3(0.1 + random.nextDouble(), 0.1 + random.nextDouble(), 0.1 + random.nextDouble());
    }
}
