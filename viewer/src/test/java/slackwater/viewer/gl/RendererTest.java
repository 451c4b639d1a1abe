package slackwater.viewer.gl;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.camera.View;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.Composer;
import slackwater.viewer.scene.Cuts;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Look;
import slackwater.viewer.scene.MadeUpScene;
import slackwater.viewer.scene.Paint;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.Water;
import slackwater.viewer.scene.WaterParts;
import slackwater.viewer.shape.Axis;
import slackwater.viewer.shape.Polylines;
import slackwater.viewer.shape.SliceSheet.Cut;
import slackwater.viewer.shape.Solids;

/** What stands on the pixels, against what must. */
class RendererTest {
    private static final Frame FRAME = new Frame(400, 240, 1);
    private static final Bounds BOX = new Bounds(Vec3.ZERO, new Vec3(1, 0.6, 0.6));
    private static final int ROUNDING = 2;
    private static Offscreen offscreen;

    @BeforeAll
    static void open() {
        offscreen = Graphics.open();
    }

    @AfterAll
    static void close() {
        offscreen.close();
    }

    private static Drawing drawing(List<Item> items) {
        return new Drawing("", List.of(), items, List.of(), List.of(), BOX);
    }

    private static Image front(List<Item> items) {
        return offscreen.draw(drawing(items), View.FRONT.on(BOX, FRAME, Margins.NONE), FRAME);
    }

    private static void assertColour(Colour wanted, int found) {
        Colour colour = Colour.of(found);
        double most = ROUNDING / 255.0;
        assertEquals(wanted.red(), colour.red(), most, Integer.toHexString(found));
        assertEquals(wanted.green(), colour.green(), most, Integer.toHexString(found));
        assertEquals(wanted.blue(), colour.blue(), most, Integer.toHexString(found));
    }

    private static Item block(Vec3 low, Vec3 high, Colour colour) {
        return Body.of(Solids.box(low, high, 1), Paint.flat(colour, 0));
    }

    /** A slice of one speed has the very colour that the legend gives this speed, at every speed. */
    @Test
    void aSpeedHasTheColourOfTheLegend() {
        Grid grid = new Grid(10, 6, 6, 0.1);
        boolean[] fluid = new boolean[grid.cells()];
        Arrays.fill(fluid, true);
        ColourScale scale = ColourScale.ofSpeed(0.3);
        float[] none = new float[grid.cells()];
        for (float speed = 0; speed <= 0.4f; speed += 0.02f) {
            float[] speeds = new float[grid.cells()];
            Arrays.fill(speeds, speed);
            Water water = new Water(new FlowStatistics(grid, fluid, speeds, none, none, speeds, speeds, none, none,
                    none), none, true);
            Image image = front(List.of(WaterParts.slice(water, new Cut(Axis.Y, 0.3), scale, new Vec3(1, 0.6, 0.6))));
            assertColour(scale.colour(speed), image.at(200, 120));
        }
    }

    @Test
    void theNearerThingHidesTheFarther() {
        Item near = block(new Vec3(0.2, 0.1, 0.2), new Vec3(0.8, 0.2, 0.4), Palette.ROCK);
        Item far = block(new Vec3(0, 0.4, 0), new Vec3(1, 0.5, 0.6), Palette.SAND);
        for (List<Item> order : List.of(List.of(near, far), List.of(far, near))) {
            Image image = front(order);
            assertColour(Palette.ROCK, image.at(200, 120));
            assertColour(Palette.SAND, image.at(200, 20));
        }
    }

    /** One half-open sheet over another: the blend that the formula "over" gives, whatever the order. */
    @Test
    void seeThroughThingsBlendFromBackToFront() {
        Colour blue = Palette.JET.withOpacity(0.4);
        Colour plum = Palette.STILL.withOpacity(0.3);
        Item near = Body.of(Solids.rectangle(new Vec3(0, 0.1, 0), new Vec3(1, 0, 0), new Vec3(0, 0, 0.6), 2),
                Paint.flat(blue, 0.5));
        Item far = Body.of(Solids.rectangle(new Vec3(0, 0.5, 0), new Vec3(1, 0, 0), new Vec3(0, 0, 0.6), 2),
                Paint.flat(plum, 0.5));
        Image one = front(List.of(near, far));
        Image other = front(List.of(far, near));
        assertArrayEquals(one.rgb(), other.rgb());
        Colour light = Colour.of(one.at(200, 120));
        Image alone = front(List.of(far));
        Colour behind = Colour.of(alone.at(200, 120));
        Colour sheet = Colour.of(front(List.of(Body.of(Solids.rectangle(new Vec3(0, 0.1, 0), new Vec3(1, 0, 0),
                new Vec3(0, 0, 0.6), 2), Paint.flat(blue.withOpacity(1), 0.5)))).at(200, 120));
        assertEquals(0.4 * sheet.red() + 0.6 * behind.red(), light.red(), 0.012);
        assertEquals(0.4 * sheet.blue() + 0.6 * behind.blue(), light.blue(), 0.012);
    }

    @Test
    void rockEndsAtTheGlass() {
        Image image = front(List.of(block(new Vec3(-0.5, 0.1, 0.2), new Vec3(0.5, 0.3, 0.4), Palette.ROCK)));
        Camera camera = View.FRONT.on(BOX, FRAME, Margins.NONE);
        int left = (int) Math.round(camera.spot(new Vec3(0, 0, 0.3), FRAME).xPx());
        assertColour(Palette.ROCK, image.at(left + 3, 120));
        int right = (int) Math.round(camera.spot(new Vec3(0.5, 0, 0.3), FRAME).xPx());
        assertColour(Palette.GROUND, image.at(right + 4, 120));
    }

    /** A line of six units is six pixels wide at scale 1, twelve at scale 2, near or far. */
    @Test
    void aLineKeepsItsWidth() {
        Strokes line = Strokes.of(Polylines.of(List.of(List.of(new Vec3(0.1, 0.3, 0.3), new Vec3(0.9, 0.3, 0.3)))),
                Paint.flat(Palette.INK, 0), 6);
        for (int scale = 1; scale <= 2; scale++) {
            Frame frame = new Frame(400 * scale, 240 * scale, scale);
            Image image = offscreen.draw(drawing(List.of(line)), View.FRONT.on(BOX, frame, Margins.NONE), frame);
            double dark = 0;
            for (int y = 0; y < frame.heightPx(); y++) {
                Colour colour = Colour.of(image.at(frame.widthPx() / 2, y));
                dark += (Palette.GROUND.red() - colour.red()) / (Palette.GROUND.red() - Palette.INK.red());
            }
            assertEquals(6 * scale, dark, 0.6, "at scale " + scale);
        }
    }

    @Test
    void theSameDrawingGivesTheSameBytes() {
        Scene scene = MadeUpScene.scene(0.04, true);
        Drawing drawing = Composer.draw(scene, Look.of(scene, EnumSet.allOf(Layer.class),
                List.of(Cuts.front(scene.scenario()))));
        Image first = Graphics.draw(offscreen, drawing, View.CORNER, FRAME);
        Graphics.draw(offscreen, drawing, View.FRONT, FRAME);
        assertArrayEquals(first.rgb(), Graphics.draw(offscreen, drawing, View.CORNER, FRAME).rgb());
        List<Item> turned = new ArrayList<>(drawing.items());
        Collections.reverse(turned);
        Drawing other = new Drawing(drawing.title(), drawing.notes(), turned, drawing.labels(), drawing.legends(),
                drawing.boxM());
        double share = Graphics.share(first, Graphics.draw(offscreen, other, View.CORNER, FRAME), 40);
        assertTrue(share < 0.01, "order mattered for " + share + " of the pixels");
    }

    /** Quick edges change the edges alone; and what stands still has smooth ones by the second picture. */
    @Test
    void quickEdgesLastAsLongAsThePictureMoves() {
        Scene scene = MadeUpScene.scene(0.04, true);
        Drawing drawing = Composer.draw(scene, Look.of(scene, EnumSet.of(Layer.SPEED, Layer.STREAMLINES),
                List.of(Cuts.front(scene.scenario()))));
        Image smooth = Graphics.draw(offscreen, drawing, View.CORNER, FRAME);
        Camera camera = View.CORNER.on(drawing.boxM(), FRAME, Renderer.margins(drawing, FRAME, View.CORNER.lens()));
        try (Renderer renderer = new Renderer(); Canvas page = new Canvas(FRAME, 0)) {
            Target target = new Target(page.framebuffer(), 0, 0);
            renderer.draw(drawing, camera, FRAME, target, Renderer.Edges.QUICK);
            double share = Graphics.share(smooth, Offscreen.read(FRAME), 40);
            assertTrue(share > 0.0005 && share < 0.06, "quick edges differ in " + share + " of the pixels");
            renderer.draw(drawing, camera, FRAME, target, Renderer.Edges.QUICK);
            assertArrayEquals(smooth.rgb(), Offscreen.read(FRAME).rgb());
            renderer.draw(drawing, camera.orbited(0.1, 0), FRAME, target, Renderer.Edges.QUICK);
            renderer.draw(drawing, camera, FRAME, target, Renderer.Edges.SMOOTH);
            assertArrayEquals(smooth.rgb(), Offscreen.read(FRAME).rgb());
        }
    }

    @Test
    void everySizeCanBeDrawn() {
        Scene scene = Scene.of(MadeUpScene.scenario());
        Drawing drawing = Composer.draw(scene, Look.of(scene, EnumSet.allOf(Layer.class), List.of()));
        for (Frame frame : List.of(new Frame(1, 1, 1), new Frame(64, 2000, 0.5), new Frame(2000, 64, 3),
                new Frame(3840, 2160, 2))) {
            Image image = Graphics.draw(offscreen, drawing, View.CORNER, frame);
            assertEquals(frame.widthPx() * frame.heightPx() * 3, image.rgb().length);
        }
    }

    /** Every letter has its place, and one that the font lacks does no harm. */
    @Test
    void wordsOfAnyScriptCanStandInATitle() {
        Image plain = offscreen.draw(drawing(List.of()), View.FRONT.on(BOX, FRAME, Margins.NONE), FRAME);
        Drawing titled = new Drawing("R\u00edf 3 \u2713 \u6d77 \ud83d\udc20", List.of(), List.of(), List.of(),
                List.of(), BOX);
        Image image = offscreen.draw(titled, View.FRONT.on(BOX, FRAME, Margins.NONE), FRAME);
        assertTrue(Graphics.share(plain, image, 40) > 0.002, "no title to be seen");
    }
}
