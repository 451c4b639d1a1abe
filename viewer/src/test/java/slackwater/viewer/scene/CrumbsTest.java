package slackwater.viewer.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.detritus.Place;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.scene.Legend.Patches;
import slackwater.viewer.scene.Legend.Sign;

/** Grains of a made-up moment in the example tank. */
class CrumbsTest {
    private static final Scenario TANK = MadeUpScene.scenario();

    private static slackwater.detritus.Scene scene(double[][] atM, Place... places) {
        int count = places.length;
        var scene = new slackwater.detritus.Scene(25, new float[count], new float[count], new float[count],
                new byte[count], new short[count], new short[count]);
        for (int n = 0; n < count; n++) {
            scene.xM()[n] = (float) atM[n][0];
            scene.yM()[n] = (float) atM[n][1];
            scene.zM()[n] = (float) atM[n][2];
            scene.place()[n] = (byte) places[n].ordinal();
            scene.group()[n] = (short) (n % 2);
        }
        return scene;
    }

    private static final double[] OPEN = {0.6, 0.1, 0.4};

    @Test
    void everyGrainIsInOnePlace() {
        var scene = scene(new double[][] {OPEN, OPEN, OPEN, OPEN, OPEN, OPEN, OPEN}, Place.values());
        Crumbs all = Crumbs.of("food", scene, -1, new Seats(TANK, 0.02));
        assertEquals(1, all.drifting());
        assertEquals(4, all.lying());
        assertEquals(1, all.onCorals());
        assertEquals(1, all.filtered());
        assertEquals(1, all.caught());
        assertEquals(7, all.all());
        Crumbs one = Crumbs.of("food", scene, 0, new Seats(TANK, 0.02));
        assertEquals(4, one.all(), "every second one is of the first release");
        assertEquals("25 %", one.share(1));
        assertEquals("none", one.share(0));
        assertEquals("under 1 %", new Crumbs("food", 0, new float[3000], new float[3], 0, 0, 0).share(1));
    }

    /** They lie on the steps of cells, and are seen on the sand and the rock that are drawn. */
    @Test
    void whatLiesIsSeenOnWhatItLiesOn() {
        double sand = TANK.tank().sandDepthM();
        Vec3 top = topOfARock();
        var scene = scene(new double[][] {{0.6, 0.05, sand + 0.008}, {top.x(), top.y(), top.z() - 0.012},
            {top.x(), top.y(), top.z() + 0.012}}, Place.SAND, Place.ROCK, Place.ROCK);
        float[] at = Crumbs.of("food", scene, -1, new Seats(TANK, 0.02)).lyingM();
        assertEquals(sand, at[2], 0.0015);
        assertEquals(top.z(), at[5], 0.003, "sunk into the rock by the grid");
        assertEquals(top.z(), at[8], 0.003, "above the rock by the grid");
    }

    private static Vec3 topOfARock() {
        var solid = TANK.rocks().get(0).solid();
        Vec3 low = solid.bounds().low();
        Vec3 high = solid.bounds().high();
        double z = high.z();
        Vec3 at = new Vec3((low.x() + high.x()) / 2, (low.y() + high.y()) / 2, z);
        for (; z > 0; z -= 0.0005) {
            Vec3 tried = new Vec3(at.x(), at.y(), z);
            if (TANK.rocks().stream().anyMatch(rock -> rock.solid().contains(tried))) {
                return tried;
            }
        }
        throw new AssertionError("no rock");
    }

    /** Drifting and lying ones differ in shape and in lightness, and the legend has both signs. */
    @Test
    void driftingAndLyingDifferInMoreThanHue() {
        var scene = scene(new double[][] {OPEN, OPEN}, Place.WATER, Place.SAND);
        Crumbs crumbs = Crumbs.of("food", scene, -1, new Seats(TANK, 0.02));
        List<Item> items = GrainParts.of(crumbs, TANK.tank().insideM());
        Strokes lying = (Strokes) items.get(0);
        Strokes drifting = (Strokes) items.get(1);
        assertEquals(2, lying.lines().lineCount(), "a cross");
        assertEquals(1, drifting.lines().pointCount(), "a dot");
        Strokes small = (Strokes) GrainParts.of(crumbs, TANK.tank().insideM(), 300).get(1);
        assertEquals(drifting.widthUnits() / 2, small.widthUnits(), 1e-9, "in a narrow picture");
        assertTrue(lightness(drifting) - lightness(lying) > 0.5);
        List<Legend.Patch> patches = ((Patches) GrainParts.legend(crumbs)).patches();
        assertEquals(List.of(Sign.DOT, Sign.CROSS, Sign.NONE), patches.stream().map(Legend.Patch::sign).toList());
        assertEquals("food in the water after 25 s: 50 %", patches.get(0).words());
        assertNotEquals(patches.get(0).colour(), patches.get(1).colour());
    }

    private static double lightness(Strokes strokes) {
        var colour = strokes.paint().colour();
        return 0.2126 * colour.red() + 0.7152 * colour.green() + 0.0722 * colour.blue();
    }

    /** Of many only some are drawn; the shares are of all. */
    @Test
    void ofManyOnlySomeAreDrawn() {
        Crumbs many = new Crumbs("food", 300, new float[3 * 4000], new float[3 * 6000], 0, 0, 0);
        assertEquals(4, GrainParts.each(many));
        List<Item> items = GrainParts.of(many, new Vec3(1.2, 0.5, 0.5));
        assertEquals(2 * 1500, ((Strokes) items.get(0)).lines().lineCount());
        assertEquals(1000, ((Strokes) items.get(1)).lines().pointCount());
        List<Legend.Patch> patches = ((Patches) GrainParts.legend(many)).patches();
        assertEquals("one of 4 is drawn", patches.get(3).words());
    }
}
