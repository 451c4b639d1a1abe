package slackwater.viewer.gl;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.View;
import slackwater.viewer.scene.Drawing;

/**
 * What there is to draw with in the tests. Where there is nothing, they are left out and say why, or fail where the
 * environment has SLACKWATER_GRAPHICS=required, as in continuous integration.
 */
public final class Graphics {
    private Graphics() {
    }

    /** Ends a test that has nothing to draw with. */
    public static void missing(String why) {
        if ("required".equals(System.getenv("SLACKWATER_GRAPHICS"))) {
            throw new AssertionError("SLACKWATER_GRAPHICS=required, and " + why);
        }
        assumeTrue(false, "left out: " + why);
    }

    static Offscreen open() {
        try {
            return Offscreen.open();
        } catch (NoGraphics none) {
            missing(none.getMessage());
            throw new AssertionError(none);
        }
    }

    static Image draw(Offscreen offscreen, Drawing drawing, View view, Frame frame) {
        return offscreen.draw(drawing, view.on(drawing.boxM(), frame, Renderer.margins(drawing, frame,
                view.lens())), frame);
    }

    /** Mean over all channels of all pixels of how far two pictures differ, 0..255. */
    static double difference(Image one, Image other) {
        long sum = 0;
        for (int n = 0; n < one.rgb().length; n++) {
            sum += Math.abs((one.rgb()[n] & 255) - (other.rgb()[n] & 255));
        }
        return (double) sum / one.rgb().length;
    }

    /** Share of the pixels of which a channel differs by more than a limit. */
    static double share(Image one, Image other, int limit) {
        int count = 0;
        for (int n = 0; n < one.rgb().length; n += 3) {
            int most = 0;
            for (int channel = 0; channel < 3; channel++) {
                most = Math.max(most, Math.abs((one.rgb()[n + channel] & 255) - (other.rgb()[n + channel] & 255)));
            }
            count += most > limit ? 1 : 0;
        }
        return 3.0 * count / one.rgb().length;
    }
}
