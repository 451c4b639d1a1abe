package slackwater.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.cli.ExitCode;
import slackwater.cli.Main;
import slackwater.viewer.gl.Graphics;
import slackwater.viewer.gl.NoGraphics;
import slackwater.viewer.gl.Offscreen;

/** The command as its user meets it. */
class PictureTest {
    private static final String NANO = "../scenarios/nano-30.toml";

    @TempDir
    private Path folder;

    private record Said(int code, String out, String err) {
    }

    private static Said say(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] arguments = new String[words.length];
        for (int n = 0; n < words.length; n++) {
            arguments[n] = words[n].toString();
        }
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Program.extras(), arguments);
        return new Said(code, out.toString(), err.toString());
    }

    private static void assumeGraphics() {
        try (Offscreen offscreen = Offscreen.open()) {
            assumeTrue(!offscreen.driver().isEmpty(), "a driver without a name");
        } catch (NoGraphics none) {
            Graphics.missing(none.getMessage());
        }
    }

    /** Where its grains ended, from the files that a run with grains leaves; without them a note says so. */
    @Test
    void grainsOfARunAreDrawn() throws IOException {
        assumeGraphics();
        Path run = folder.resolve("run");
        say("run", NANO, "--cell-cm", "4", "--one-grid", "--max-seconds", "1", "--out", run);
        Path grains = folder.resolve("grains.png");
        Path bare = folder.resolve("none.png");
        Files.move(run.resolve("grains.vtp"), folder.resolve("kept.vtp"));
        assertEquals(ExitCode.DONE, say("picture", run, "--show", "grains", "--size", "400x300", "--out", bare).code());
        Files.move(folder.resolve("kept.vtp"), run.resolve("grains.vtp"));
        assertEquals(ExitCode.DONE, say("picture", run, "--show", "grains", "--size", "400x300", "--out",
                grains).code());
        BufferedImage one = ImageIO.read(grains.toFile());
        BufferedImage other = ImageIO.read(bare.toFile());
        int differing = 0;
        for (int n = 0; n < 400 * 200; n++) {
            int at = n + 400 * 60; // below the notes, above the legend
            differing += one.getRGB(at % 400, at / 400) != other.getRGB(at % 400, at / 400) ? 1 : 0;
        }
        assertTrue(differing > 500, "the grains show: " + differing);
        Files.writeString(run.resolve("grains.vtp"), "spoilt");
        assertRefused("grains.vtp: has no array", "picture", run, "--show", "grains", "--out", grains);
    }

    /** From the scenario to the run to pictures of its result, and a report with its views in it. */
    @Test
    void aRunCanBeLookedAt() throws IOException {
        assumeGraphics();
        Path run = folder.resolve("run");
        Said ran = say("run", NANO, "--cell-cm", "4", "--one-grid", "--max-seconds", "1", "--out", run);
        assertTrue(ran.out().contains("Views drawn with OpenGL ("), ran.out() + ran.err());
        String page = Files.readString(run.resolve("report.html"));
        assertEquals(3, page.split("<img ").length, "two views in the report");
        Path still = folder.resolve("still.png");
        Path bare = folder.resolve("bare.png");
        assertEquals(ExitCode.DONE, say("picture", run, "--view", "front", "--show", "still-water,speed", "--size",
                "400x300", "--scale", "1.5", "--out", still).code());
        assertEquals(ExitCode.DONE, say("picture", NANO, "--view", "front", "--show", "names", "--size", "400x300",
                "--scale", "1.5", "--out", bare).code());
        BufferedImage one = ImageIO.read(still.toFile());
        BufferedImage other = ImageIO.read(bare.toFile());
        assertEquals(600, one.getWidth());
        assertEquals(450, one.getHeight());
        int differing = 0;
        for (int n = 0; n < 600 * 450; n++) {
            differing += one.getRGB(n % 600, n / 600) != other.getRGB(n % 600, n / 600) ? 1 : 0;
        }
        assertTrue(differing > 600 * 450 / 5, "the water shows: " + differing);
    }

    @Test
    void aTurntableWritesAPictureForEachTurn() throws IOException {
        assumeGraphics();
        Said said = say("picture", NANO, "--turntable", "3", "--size", "120x90", "--out", folder.resolve("turn.png"));
        assertEquals(ExitCode.DONE, said.code(), said.err());
        byte[] first = Files.readAllBytes(folder.resolve("turn-000.png"));
        byte[] last = Files.readAllBytes(folder.resolve("turn-002.png"));
        assertFalse(Arrays.equals(first, last), "the camera went round");
    }

    @Test
    void saysWhatIsWrong() {
        assertRefused("--show: found fog, must be one of still-water, speed", "picture", NANO, "--show", "fog");
        assertRefused("--size, --scale: found 10", "picture", NANO, "--size", "10");
        assertRefused("--size, --scale: found 99999x20", "picture", NANO, "--size", "99999x20");
        assertRefused("--size, --scale: found 16384x16384 at 1.0, must be like 1600x900", "picture", NANO, "--size",
                "16384x16384");
        assertRefused("--turntable: found 0", "picture", NANO, "--turntable", "0");
        assertRefused("has no result.json, must be the folder of a finished run", "picture", folder);
        assertRefused("nowhere.toml: is missing", "picture", "nowhere.toml");
        assertRefused("--view: found 'below', must be one of front, side, top, corner", "picture", NANO,
                "--view", "below");
    }

    private static void assertRefused(String says, Object... words) {
        Said said = say(words);
        assertEquals(ExitCode.BAD_INPUT, said.code(), said.err());
        assertTrue(said.err().contains(says) && !said.err().contains("\tat "), said.err());
    }

    @Test
    void helpNamesTheCommand() {
        assertTrue(say("--help").out().contains("picture"), "picture is among the commands");
        assertTrue(say("picture", "--help").out().contains("--view=SIDE"));
    }
}
