package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.detritus.Census;
import slackwater.detritus.Drift;
import slackwater.detritus.Grain;
import slackwater.detritus.Place;
import slackwater.detritus.Release;
import slackwater.detritus.Scene;
import slackwater.result.UnreadableResult;

/** What VtkGrains writes comes back; that other readers understand it is tested where VTK is. */
class GrainsFileTest {
    @TempDir
    private Path folder;

    private static String written(Scene scene) throws IOException {
        Grain grain = new Grain("test", 0.001, 1100, 0.01, 0, 1, 1, 1, 0, "made up");
        Release release = new Release(grain, new Release.From.Everywhere(), 2, 1);
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        VtkGrains.write(scene, new Drift(List.of(release, release), new Census(1, new int[1][2][7], new int[1][2]),
                List.of(scene)), stream);
        return stream.toString(StandardCharsets.UTF_8);
    }

    @Test
    void whatWasWrittenComesBack() throws IOException, UnreadableResult {
        Scene scene = new Scene(300, new float[] {0.1f, 0.25f, 1}, new float[] {0, 0.125f, 0.5f},
                new float[] {0.04f, 0.3f, 0.45f}, new byte[] {1, 4, 6}, new short[] {-1, 3, 0},
                new short[] {0, 1, 1});
        Path file = folder.resolve("grains.vtp");
        Files.writeString(file, written(scene));
        Scene read = GrainsFile.read(file).orElseThrow();
        assertArrayEquals(scene.xM(), read.xM(), 1e-5f);
        assertArrayEquals(scene.yM(), read.yM(), 1e-5f);
        assertArrayEquals(scene.zM(), read.zM(), 1e-5f);
        assertEquals(Place.CORAL, read.place(1));
        assertArrayEquals(scene.at(), read.at());
        assertArrayEquals(scene.group(), read.group());
    }

    @Test
    void noFileAndNoGrainsAreNone() throws IOException, UnreadableResult {
        assertEquals(Optional.empty(), GrainsFile.read(folder.resolve("gone.vtp")));
        Path file = folder.resolve("grains.vtp");
        Files.writeString(file, written(new Scene(0, new float[0], new float[0], new float[0], new byte[0],
                new short[0], new short[0])));
        assertEquals(Optional.empty(), GrainsFile.read(file));
    }

    @Test
    void whatIsBrokenIsSaid() throws IOException {
        Scene scene = new Scene(300, new float[] {0.1f}, new float[] {0}, new float[] {0.04f}, new byte[] {1},
                new short[] {-1}, new short[] {0});
        String good = written(scene);
        Path file = folder.resolve("grains.vtp");
        for (String[] spoilt : new String[][] {
            {good.substring(0, good.length() / 3), "has no array"}, {good.replace("0.04000", "NaN"), "finite"},
            {good.replace("0.04000", "deep"), "must be a number"},
            {good.replaceFirst("(Name=\"place\"[^>]*>\\s*)1", "$19"), "must be a whole number, 0 to 6"},
            {good.replaceFirst("(Name=\"place\"[^>]*>\\s*)1", "$11.7"), "must be a whole number"},
            {good.replaceFirst("(Name=\"place\"[^>]*>\\s*)1", "$1" + Place.CORAL.ordinal()), "on which"},
            {good.replaceFirst("(Name=\"at\"[^>]*>\\s*)-1", "$1"), "has 0 values for 1 grains"}}) {
            Files.writeString(file, spoilt[0]);
            String said = assertThrows(UnreadableResult.class, () -> GrainsFile.read(file)).getMessage();
            assertTrue(said.contains(spoilt[1]) && said.contains("run the scenario again"), said);
        }
    }
}
