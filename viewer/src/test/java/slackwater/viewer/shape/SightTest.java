package slackwater.viewer.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.geometry.Vec3;

/** Against geometry: a sphere is in the way where its middle lies within its radius of the line. */
class SightTest {
    private static final double RADIUS_M = 0.2;
    private static final Vec3 MIDDLE = new Vec3(0.5, 0.4, 0.3);

    @Test
    void aSphereHidesWhatLiesBehindIt() {
        Surface sphere = Solids.ellipsoid(MIDDLE, new Vec3(RADIUS_M, RADIUS_M, RADIUS_M), 0.01);
        int checked = 0;
        for (long seed = 1; seed <= 400; seed++) {
            Random random = new Random(seed);
            Vec3 from = new Vec3(random.nextDouble() * 3 - 1, -2, random.nextDouble() * 3 - 1);
            Vec3 to = new Vec3(random.nextDouble(), 1.5, random.nextDouble());
            Vec3 way = to.minus(from).normalised();
            Vec3 off = MIDDLE.minus(from);
            double beside = off.minus(way.times(off.dot(way))).length();
            if (Math.abs(beside - RADIUS_M) > 1e-3) {
                assertEquals(beside < RADIUS_M, Sight.isBlocked(sphere, from, to), "seed " + seed);
                checked++;
            }
        }
        assertTrue(checked > 350, "only " + checked);
    }

    @Test
    void whatLiesBeforeItIsSeen() {
        Surface sphere = Solids.ellipsoid(MIDDLE, new Vec3(RADIUS_M, RADIUS_M, RADIUS_M), 0.01);
        assertFalse(Sight.isBlocked(sphere, new Vec3(0.5, -2, 0.3), new Vec3(0.5, 0.19, 0.3)));
        assertTrue(Sight.isBlocked(sphere, new Vec3(0.5, -2, 0.3), new Vec3(0.5, 0.21, 0.3)));
    }
}
