package slackwater.viewer.gl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.report.Png;
import slackwater.scenario.Scenario;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.View;
import slackwater.viewer.scene.Composer;
import slackwater.viewer.scene.Cuts;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Look;
import slackwater.viewer.scene.MadeUpScene;
import slackwater.viewer.scene.Scene;

/**
 * Pictures against those kept from before: a check on ourselves, not on the truth. Drivers round edges and letters
 * differently, so a hundredth of the pixels may differ by more than 40 of 255, and all on the mean by 2; a layer that
 * is missing, a swapped colour or a view from the wrong side differs by far more. -Dslackwater.write=true keeps anew.
 */
class GoldenTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "slackwater", "viewer", "gl");
    private static final Frame FRAME = new Frame(640, 360, 0.8);
    private static final int LIMIT = 40;
    private static final double MOST_SHARE = 0.01;
    private static final double MOST_MEAN = 2;

    static List<Arguments> pictures() {
        return List.of(Arguments.of("front-still-water", View.FRONT,
                        EnumSet.of(Layer.STILL_WATER, Layer.JETS, Layer.NAMES)),
                Arguments.of("side-speed", View.SIDE, EnumSet.of(Layer.SPEED, Layer.NAMES)),
                Arguments.of("top-fast-water", View.TOP, EnumSet.of(Layer.FAST_WATER, Layer.JETS, Layer.NAMES)),
                Arguments.of("corner-streamlines", View.CORNER, EnumSet.of(Layer.STREAMLINES, Layer.SHEAR)),
                Arguments.of("corner-grains", View.CORNER, EnumSet.of(Layer.GRAINS)));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void looksAsBefore(String name, View view, Set<Layer> layers) throws IOException {
        Scene scene = MadeUpScene.withGrains(MadeUpScene.scene(0.02, true));
        Scenario scenario = scene.scenario();
        Drawing drawing = Composer.draw(scene, Look.of(scene, layers, List.of(Cuts.side(scenario))));
        try (Offscreen offscreen = Graphics.open()) {
            Image image = Graphics.draw(offscreen, drawing, view, FRAME);
            Path file = FOLDER.resolve(name + ".png");
            if (Boolean.getBoolean("slackwater.write")) {
                Files.createDirectories(FOLDER);
                Files.write(file, Png.encode(image.widthPx(), image.heightPx(), image.rgb()));
            }
            Image kept = read(file);
            assertEquals(kept.widthPx(), image.widthPx());
            double mean = Graphics.difference(image, kept);
            double share = Graphics.share(image, kept, LIMIT);
            assertTrue(mean <= MOST_MEAN && share <= MOST_SHARE, name + ": mean " + mean + ", share " + share);
        }
    }

    private static Image read(Path file) throws IOException {
        BufferedImage kept = ImageIO.read(file.toFile());
        byte[] rgb = new byte[3 * kept.getWidth() * kept.getHeight()];
        for (int n = 0; n < rgb.length / 3; n++) {
            int colour = kept.getRGB(n % kept.getWidth(), n / kept.getWidth());
            rgb[3 * n] = (byte) (colour >> 16);
            rgb[3 * n + 1] = (byte) (colour >> 8);
            rgb[3 * n + 2] = (byte) colour;
        }
        return new Image(kept.getWidth(), kept.getHeight(), rgb);
    }
}
