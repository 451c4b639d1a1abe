package slackwater.viewer.app;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slackwater.field.FlowStatistics;
import slackwater.report.Artist;
import slackwater.report.Artwork;
import slackwater.report.Png;
import slackwater.result.FlowResult;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.View;
import slackwater.viewer.gl.Image;
import slackwater.viewer.gl.NoGraphics;
import slackwater.viewer.gl.Offscreen;
import slackwater.viewer.gl.Renderer;
import slackwater.viewer.scene.Composer;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Look;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.Water;

/** Draws the report's views with OpenGL where there is one. */
final class GlArtist implements Artist {
    /** Twice as fine as the page shows them, so that they can be printed. */
    private static final Frame FRAME = new Frame(1792, 1008, 1.6);
    private static final int PAGE_UNITS = 864;

    @Override
    public Artwork draw(FlowResult result, FlowStatistics flow) {
        try {
            return drawn(result, flow);
        } catch (NoGraphics none) {
            return new Artwork(List.of(), "Slices only: " + none.getMessage());
        } catch (RuntimeException | LinkageError | OutOfMemoryError broken) {
            // Pictures are an extra: whatever goes wrong with them, the hours of computing before are not lost.
            return new Artwork(List.of(), "Slices only: the views could not be drawn (" + broken + ").");
        }
    }

    private static Artwork drawn(FlowResult result, FlowStatistics flow) throws NoGraphics {
        Scene scene = new Scene(result.scenario(), Optional.of(new Water(flow,
                result.assessment().stillWater().probability(), result.quality().settled())),
                result.assessment().corals());
        try (Offscreen offscreen = Offscreen.open()) {
            return new Artwork(List.of(
                    view(offscreen, scene, View.FRONT, EnumSet.of(Layer.STILL_WATER, Layer.JETS, Layer.NAMES),
                            "The tank from the front, with what likely and what surely stands still, and the aims of"
                                    + " the pumps."),
                    view(offscreen, scene, View.CORNER, EnumSet.of(Layer.STREAMLINES, Layer.NAMES),
                            "Where the water goes: lines along the mean flow, coloured by its speed, from the front"
                                    + " right.")),
                    "Views drawn with OpenGL (" + offscreen.driver() + "), slices without.");
        }
    }

    private static Artwork.View view(Offscreen offscreen, Scene scene, View view, Set<Layer> layers, String caption) {
        Drawing drawing = Composer.draw(scene, Look.of(scene, layers, List.of()));
        Image image = offscreen.draw(drawing, view.on(drawing.boxM(), FRAME, Renderer.margins(drawing, FRAME,
                view.lens())), FRAME);
        return new Artwork.View(Png.encode(image.widthPx(), image.heightPx(), image.rgb()), PAGE_UNITS, caption);
    }
}
