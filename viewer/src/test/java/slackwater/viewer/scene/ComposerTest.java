package slackwater.viewer.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.shape.Axis;
import slackwater.viewer.shape.SliceSheet.Cut;
import org.junit.jupiter.api.Test;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.shape.Surface;

class ComposerTest {
    private static final double CELL_M = 0.04;

    private static Drawing drawn(Scene scene, Set<Layer> layers) {
        return Composer.draw(scene, Look.of(scene, layers, List.of(Cuts.front(scene.scenario()))));
    }

    @Test
    void aLayoutAloneSaysSoAndShowsNoWater() {
        Drawing drawing = drawn(Scene.of(MadeUpScene.scenario()), EnumSet.allOf(Layer.class));
        assertTrue(drawing.notes().get(0).startsWith("The layout alone"), drawing.notes().toString());
        assertTrue(drawing.items().stream().noneMatch(item -> item.paint().map().isPresent()));
        assertTrue(drawing.legends().stream().noneMatch(legend -> legend instanceof Legend.Bar));
    }

    @Test
    void everyCoralHasItsReadingItsVerdictAndItsUnit() {
        Scene scene = MadeUpScene.scene(CELL_M, true);
        Drawing drawing = drawn(scene, EnumSet.of(Layer.NAMES));
        for (int n = 0; n < scene.readings().size(); n++) {
            Label label = drawing.labels().get(n);
            assertEquals(scene.scenario().corals().get(n).name(), label.title());
            Verdict verdict = scene.readings().get(n).verdict();
            assertTrue(label.detail().contains(" cm/s") && label.detail().contains(verdict.word())
                    && label.detail().indexOf(verdict.symbol()) > 0, label.detail());
            assertFalse(label.pale());
        }
        assertEquals("3.1 cm/s  \u2713 Pass", drawing.labels().get(0).detail());
        Look inches = new Look(Set.of(Layer.NAMES), List.of(), 0.2, 0.1, Units.US);
        assertEquals("1.2 in/s  \u2713 Pass", Composer.draw(scene, inches).labels().get(0).detail());
    }

    @Test
    void numbersThatHaveNotSettledStepBack() {
        Drawing drawing = drawn(MadeUpScene.scene(CELL_M, false), EnumSet.of(Layer.NAMES));
        assertTrue(drawing.labels().get(0).pale());
        assertTrue(drawing.notes().get(0).contains("NOT settled"), drawing.notes().get(0));
    }

    /** Both levels are there and as large as the balls that they are: chance 1/2 at 15 cm, 0.95 at 15 - 2 ln 19 cm. */
    @Test
    void stillWaterComesInTwoLevels() {
        Scene scene = MadeUpScene.scene(0.02, true);
        List<Item> still = WaterParts.still(scene.water().orElseThrow(), 0.48);
        assertEquals(2, still.size());
        double[] radii = {0.15, 0.15 - 0.02 * Math.log(19)};
        for (int level = 0; level < 2; level++) {
            Surface surface = ((Body) still.get(level)).surface();
            int checked = 0;
            for (int n = 0; n < surface.vertexCount(); n++) {
                Vec3 at = new Vec3(surface.points()[3 * n], surface.points()[3 * n + 1], surface.points()[3 * n + 2]);
                boolean inside = at.x() < 1.18 && at.y() < 0.48;
                if (inside && at.x() > 1.05 && at.z() > 0.08) { // away from glass, rock and sand
                    assertEquals(radii[level], at.minus(new Vec3(1.05, 0.45, 0.1)).length(), 0.012, at.toString());
                    checked++;
                }
            }
            assertTrue(checked > 20, "only " + checked);
        }
        assertTrue(still.get(0).paint().colour().opacity() < still.get(1).paint().colour().opacity());
    }

    @Test
    void everyColourInThePictureHasItsLegend() {
        Drawing drawing = drawn(MadeUpScene.scene(CELL_M, true), EnumSet.allOf(Layer.class));
        List<String> titles = drawing.legends().stream().map(Legend::title).toList();
        assertTrue(titles.contains("mean speed, cm/s") && titles.stream().anyMatch(title -> title.endsWith(", Pa")),
                titles.toString());
        assertEquals(4, ((Legend.Patches) drawing.legends().get(2)).patches().size());
    }

    /** Never red against green: no two verdicts differ by hue between those alone, and each has a sign of its own. */
    @Test
    void verdictsAreToldApartWithoutColour() {
        assertEquals(Verdict.values().length, List.of(Verdict.values()).stream().map(Verdict::symbol).distinct()
                .count());
        for (Verdict verdict : Verdict.values()) {
            Colour colour = Palette.of(verdict);
            assertFalse(colour.green() > 1.15 * colour.red() && colour.green() > 1.15 * colour.blue(), "green");
        }
    }

    /** Against sorting every speed. */
    @Test
    void countsSpeedsAsSortingThemWould() {
        Water water = MadeUpScene.scene(CELL_M, true).water().orElseThrow();
        double[] speeds = IntStream.range(0, water.flow().grid().cells()).filter(cell -> water.flow().fluid()[cell])
                .mapToDouble(cell -> water.flow().meanSpeed()[cell]).sorted().toArray();
        for (double share = 0.05; share < 1; share += 0.1) {
            assertEquals(speeds[(int) (share * (speeds.length - 1))], water.quantileMPerS(share), 2e-4);
        }
    }

    /** What lies on the ground goes on top of sand and rock, and not on the undersides. */
    @Test
    void depositsLieOnTheGround() {
        Scene bare = MadeUpScene.scene(0.02, true);
        Water water = bare.water().orElseThrow();
        float[] even = new float[water.flow().grid().cells()];
        Arrays.fill(even, 2);
        Scene scene = bare.with(new Water(water.flow(), water.stillProbability(), Map.of("fine food", even), true));
        Drawing drawing = drawn(scene, EnumSet.of(Layer.DEPOSIT));
        assertTrue(drawing.notes().toString().contains("fine food"), drawing.notes().toString());
        List<Body> maps = drawing.items().stream().filter(item -> item.paint().map().isPresent())
                .map(item -> (Body) item).toList();
        assertEquals(1 + scene.scenario().rocks().size(), maps.size());
        for (Body map : maps) {
            for (int n = 0; n < map.shades().length; n++) {
                boolean buried = map.surface().points()[3 * n + 2] < 0.05;
                boolean terrace = Math.abs(map.surface().points()[3 * n] - 0.6) < 0.06
                        && map.surface().points()[3 * n + 2] > 0.1;
                boolean under = terrace && map.surface().normals()[3 * n + 2] < -0.5;
                boolean onTop = map.surface().normals()[3 * n + 2] > 0.9 && !buried;
                assertTrue(!onTop || map.shades()[n] == 1, "on top: " + map.shades()[n]);
                assertTrue(!under || map.shades()[n] == 0, "underneath: " + map.shades()[n]);
            }
        }
        assertTrue(drawn(bare, EnumSet.of(Layer.DEPOSIT)).notes().toString().contains("no deposit to show"));
    }

    @Test
    void saysHowMuchMemoryAFieldTakes() {
        Scene scene = MadeUpScene.scene(CELL_M, true);
        Water water = scene.water().orElseThrow();
        assertEquals(41L * water.flow().grid().cells(), water.bytes());
    }

    /** Cells seldom end just at the glass or at the water line; a slice does. */
    @Test
    void aSliceEndsAtTheGlass() {
        Grid grid = new Grid(24, 24, 20, 0.0125);
        boolean[] fluid = new boolean[grid.cells()];
        Arrays.fill(fluid, true);
        float[] none = new float[grid.cells()];
        FlowStatistics flow = new FlowStatistics(grid, fluid, none, none, none, none, none, none, none, none);
        Item.Body slice = (Item.Body) WaterParts.slice(flow, none, new Cut(Axis.Y, 0.15), ColourScale.ofSpeed(0.3),
                new Vec3(0.3048, 0.3048, 0.26));
        float[] points = slice.surface().points();
        double right = 0;
        double top = 0;
        for (int n = 0; n < points.length; n += 3) {
            assertEquals(0.15, points[n + 1], 1e-6);
            right = Math.max(right, points[n]);
            top = Math.max(top, points[n + 2]);
        }
        assertEquals(0.3048, right, 1e-6);
        assertEquals(0.26, top, 1e-6);
    }
}
