package slackwater.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.geometry.Bounds;
import slackwater.geometry.Box;
import slackwater.geometry.Cylinder;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Solid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.camera.Ray;
import slackwater.viewer.camera.View;

/** Lines of sight against exact intersections. */
class PickTest {
    private static final Vec3 X = new Vec3(1, 0, 0);

    @Test
    void aSphereIsMetAtItsNearSide() {
        Ray ray = new Ray(new Vec3(-1, 0.3, 0), X);
        assertEquals(1 - 0.4, Pick.sphere(ray, new Vec3(0, 0, 0), 0.5).orElseThrow(), 1e-12);
        assertTrue(Pick.sphere(ray, new Vec3(0, 0, 0), 0.29).isEmpty());
        assertTrue(Pick.sphere(ray, new Vec3(-3, 0.3, 0), 0.5).isEmpty(), "behind");
        assertEquals(0, Pick.sphere(ray, new Vec3(-1, 0.3, 0), 0.5).orElseThrow(), "from within");
    }

    @Test
    void aBoxIsEnteredAndLeft() {
        Bounds box = new Bounds(new Vec3(1, -1, -1), new Vec3(3, 1, 1));
        double[] span = Pick.box(new Ray(Vec3.ZERO, X), box).orElseThrow();
        assertEquals(1, span[0], 1e-12);
        assertEquals(3, span[1], 1e-12);
        double diagonal = Math.sqrt(0.5);
        span = Pick.box(new Ray(Vec3.ZERO, new Vec3(diagonal, diagonal, 0)), box).orElseThrow();
        assertEquals(Math.sqrt(2), span[0], 1e-12);
        assertEquals(Math.sqrt(2), span[1], 1e-12);
        assertTrue(Pick.box(new Ray(new Vec3(0, 2, 0), X), box).isEmpty());
        assertTrue(Pick.box(new Ray(new Vec3(4, 0, 0), X), box).isEmpty());
    }

    @Test
    void solidsAreMetWhereTheyAre() {
        Ray ray = new Ray(new Vec3(-1, 0.1, 0.05), X);
        assertMet(0.8, ray, new Box(new Vec3(-0.2, 0, 0), new Vec3(0.2, 0.2, 0.2)));
        // x = -a sqrt(1 - y2/b2 - z2/c2)
        assertMet(1 - 0.3 * Math.sqrt(1 - 0.25 - 0.0625), ray,
                new Ellipsoid(Vec3.ZERO, new Vec3(0.3, 0.2, 0.2)));
        assertMet(1 - Math.sqrt(0.04 - 0.01), ray, new Cylinder(new Vec3(0, 0, -0.1), new Vec3(0, 0, 1), 0.3, 0.2));
        assertTrue(Pick.solid(new Ray(new Vec3(-1, 0.3, 0), X), new Ellipsoid(Vec3.ZERO, new Vec3(0.3, 0.2, 0.2)))
                .isEmpty());
    }

    private static void assertMet(double expected, Ray ray, Solid solid) {
        assertEquals(expected, Pick.solid(ray, solid).orElseThrow(), 1e-9);
    }

    /** From every side, whatever appears at a thing's own place in the picture is that thing or one before it. */
    @Test
    void everyThingIsHitWhereItAppears() {
        for (String name : List.of("terrace-120.toml", "nano-30.toml", "lagoon-150.toml", "peninsula-100.toml")) {
            Scenario scenario = Tanks.example(name);
            Frame frame = new Frame(1200, 800, 1);
            for (View view : View.values()) {
                Camera camera = view.on(new Bounds(Vec3.ZERO, scenario.tank().insideM()), frame, Margins.NONE);
                for (Thing thing : Thing.all(scenario)) {
                    // A rock's base may lie in the sand; its middle does not.
                    Vec3 at = thing.kind() != Thing.Kind.ROCK ? thing.atM(scenario)
                            : scenario.rocks().get(thing.index()).solid().bounds().centre();
                    Camera.Spot spot = camera.spot(at, frame);
                    Ray ray = camera.ray(spot.xPx(), spot.yPx(), frame);
                    Pick.Hit hit = Pick.thing(scenario, ray).orElseThrow(() -> new AssertionError(name + " " + thing));
                    double own = at.minus(ray.fromM()).dot(ray.direction());
                    assertTrue(hit.thing().equals(thing) || hit.distanceM() < own + 0.03, name + " " + view + thing);
                }
            }
        }
    }

    @Test
    void aPumpBeforeTheGlassIsHitFromTheFront() {
        Scenario scenario = Tanks.terrace();
        Vec3 at = scenario.pumps().get(0).atM();
        Optional<Pick.Hit> hit = Pick.thing(scenario, new Ray(new Vec3(at.x() + 0.01, -2, at.z()), new Vec3(0, 1, 0)));
        assertEquals(new Thing(Thing.Kind.PUMP, 0), hit.orElseThrow().thing());
        assertFalse(Pick.thing(scenario, new Ray(new Vec3(0.6, -2, 0.45), new Vec3(0, 1, 0))).isPresent());
    }

    @Test
    void aClickInTheWaterIsAPointOfTheWater() {
        Scenario scenario = Tanks.terrace();
        Vec3 open = Pick.water(scenario, new Ray(new Vec3(0.6, -2, 0.4), new Vec3(0, 1, 0))).orElseThrow();
        assertEquals(new Vec3(0.6, 0.25, 0.4), open);
        // Before the terrace, whose front is at 20 cm.
        Vec3 before = Pick.water(scenario, new Ray(new Vec3(0.6, -2, 0.18), new Vec3(0, 1, 0))).orElseThrow();
        assertEquals(0.185, before.y(), 1e-6);
        Vec3 onSand = Pick.water(scenario, new Ray(new Vec3(0.6, 0.1, 2), new Vec3(0, 0, -1))).orElseThrow();
        assertEquals(0.04 + 0.015, onSand.z(), 1e-9);
        assertTrue(Pick.water(scenario, new Ray(new Vec3(0.6, -2, 0.5), new Vec3(0, 1, 0))).isEmpty(), "above it");
        Random random = new Random(3);
        for (int n = 0; n < 300; n++) {
            Vec3 eye = new Vec3(random.nextDouble() * 4 - 2, -2, random.nextDouble() * 2);
            Vec3 to = new Vec3(random.nextDouble() * 1.2, random.nextDouble() * 0.5, random.nextDouble() * 0.48);
            Pick.water(scenario, new Ray(eye, to.minus(eye).normalised())).ifPresent(point -> {
                assertTrue(point.z() >= 0.04 - 1e-9 && point.z() <= 0.48 + 1e-9, point.toString());
                assertTrue(scenario.rocks().stream().noneMatch(rock -> rock.solid().contains(point)), point.toString());
            });
        }
    }
}
