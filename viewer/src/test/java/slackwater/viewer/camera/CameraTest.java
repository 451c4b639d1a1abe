package slackwater.viewer.camera;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;

class CameraTest {
    private static final Bounds TANK = new Bounds(Vec3.ZERO, new Vec3(1.2, 0.5, 0.52));
    private static final Frame FRAME = new Frame(1600, 900, 1);
    private static final Margins MARGINS = new Margins(40, 60, 90, 70);

    @ParameterizedTest
    @EnumSource
    void allOfTheTankIsSeenAndFillsThePicture(View view) {
        Camera camera = view.on(TANK, FRAME, MARGINS);
        double left = 1e9;
        double right = -1e9;
        double top = 1e9;
        double bottom = -1e9;
        for (int n = 0; n < 8; n++) {
            Camera.Spot spot = camera.spot(new Vec3((n & 1) * 1.2, (n >> 1 & 1) * 0.5, (n >> 2) * 0.52), FRAME);
            left = Math.min(left, spot.xPx());
            right = Math.max(right, spot.xPx());
            top = Math.min(top, spot.yPx());
            bottom = Math.max(bottom, spot.yPx());
        }
        assertTrue(left > 39.5 && right < 1600 - 59.5 && top > 89.5 && bottom < 900 - 69.5,
                left + " " + right + " " + top + " " + bottom);
        assertTrue(right - left > 1499 || bottom - top > 739, "neither width nor height is used: "
                + (right - left) + " x " + (bottom - top));
    }

    /** Left is left from the front, front is left from the side on the right, and the back is up from above. */
    @Test
    void sidesShowWhatTheirNamesSay() {
        Camera front = View.FRONT.on(TANK, FRAME, Margins.NONE);
        assertTrue(x(front, new Vec3(0, 0.2, 0.2)) < x(front, new Vec3(1, 0.2, 0.2)));
        assertTrue(y(front, new Vec3(0.5, 0.2, 0.4)) < y(front, new Vec3(0.5, 0.2, 0.1)));
        Camera side = View.SIDE.on(TANK, FRAME, Margins.NONE);
        assertTrue(x(side, new Vec3(0.5, 0, 0.2)) < x(side, new Vec3(0.5, 0.5, 0.2)));
        Camera top = View.TOP.on(TANK, FRAME, Margins.NONE);
        assertTrue(y(top, new Vec3(0.5, 0.5, 0.2)) < y(top, new Vec3(0.5, 0, 0.2)));
        assertTrue(x(top, new Vec3(0, 0.2, 0.2)) < x(top, new Vec3(1, 0.2, 0.2)));
    }

    private static double x(Camera camera, Vec3 point) {
        return camera.spot(point, FRAME).xPx();
    }

    private static double y(Camera camera, Vec3 point) {
        return camera.spot(point, FRAME).yPx();
    }

    /** Whatever the camera: the line of sight through where a point appears passes through the point. */
    @Test
    void aRayLeadsBackToThePoint() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            Camera camera = new Camera(new Vec3(random.nextDouble(), random.nextDouble(), random.nextDouble()),
                    random.nextDouble() * 6, random.nextDouble() * 3 - 1.5, 1 + random.nextDouble() * 4,
                    random.nextBoolean() ? Lens.PARALLEL : Lens.PERSPECTIVE);
            Frame frame = new Frame(200 + random.nextInt(3000), 200 + random.nextInt(2000), 1.5);
            Vec3 point = new Vec3(random.nextDouble(), random.nextDouble() * 0.5, random.nextDouble() * 0.5);
            Camera.Spot spot = camera.spot(point, frame);
            if (spot.depthM() > 0.1) {
                Ray ray = camera.ray(spot.xPx(), spot.yPx(), frame);
                Vec3 off = point.minus(ray.fromM());
                assertEquals(0, off.minus(ray.direction().times(off.dot(ray.direction()))).length(), 1e-6,
                        "seed " + seed);
                assertEquals(1, ray.direction().length(), 1e-12);
            }
        }
    }

    @Test
    void whatIsHeldFollowsThePointer() {
        Camera camera = View.CORNER.on(TANK, FRAME, MARGINS);
        Camera.Spot before = camera.spot(camera.targetM(), FRAME);
        Vec3 held = camera.targetM();
        Camera.Spot after = camera.panned(120, -40, FRAME).spot(held, FRAME);
        assertEquals(before.xPx() + 120, after.xPx(), 0.01);
        assertEquals(before.yPx() - 40, after.yPx(), 0.01);
    }

    @Test
    void twoPointsAreAsFarApartAsTheRulerSays() {
        Camera camera = View.FRONT.on(TANK, FRAME, MARGINS);
        double apart = x(camera, new Vec3(0.6, 0.4, 0.3)) - x(camera, new Vec3(0.5, 0.1, 0.1));
        assertEquals(0.1 / camera.heightM() * FRAME.heightPx(), apart, 1e-6);
    }
}
