package slackwater.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.cli.ExitCode;

/** The packaged program through its launcher, in a process of its own. */
class LauncherIT {
    @TempDir
    private Path folder;

    private record Said(int code, String out, String err) {
    }

    private Said launch(String... arguments) throws IOException, InterruptedException {
        assumeFalse(File.separatorChar == '\\', "Windows has a launcher of its own, slackwater.cmd");
        List<String> command = new ArrayList<>(List.of("./slackwater"));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("stdout");
        Path err = folder.resolve("stderr");
        Process process = new ProcessBuilder(command).directory(Path.of("..").toFile()).redirectOutput(out.toFile())
                .redirectErrorStream(false).redirectError(err.toFile()).start();
        int code = process.waitFor();
        return new Said(code, Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    @Test
    void runsAnExample() throws IOException, InterruptedException {
        Path out = folder.resolve("nano");
        Said run = launch("run", "scenarios/nano-30.toml", "--cell-cm", "2", "--out", out.toString());
        assertTrue(List.of(ExitCode.DONE, ExitCode.NOT_SETTLED, ExitCode.VERDICT_FAIL).contains(run.code()),
                run.err());
        assertTrue(run.out().contains("95 % range"), run.out());
        assertFalse(run.err().contains("WARNING"), run.err());
        assertTrue(Files.size(out.resolve("report.html")) > 1000);
    }

    /** Also where there is nothing to draw with: then it says so and no more. */
    @Test
    void drawsALayout() throws IOException, InterruptedException {
        Path out = folder.resolve("nano.png");
        Said picture = launch("picture", "scenarios/nano-30.toml", "--size", "240x180", "--out", out.toString());
        if (picture.code() == ExitCode.BAD_INPUT) {
            assertTrue(picture.err().startsWith("No picture can be drawn"), picture.err());
        } else {
            assertEquals(ExitCode.DONE, picture.code(), picture.err());
            assertEquals("", picture.err());
            assertTrue(Files.size(out) > 1000);
        }
    }

    @Test
    void tellsTheShellWhatWentWrong() throws IOException, InterruptedException {
        assertEquals(ExitCode.BAD_INPUT, launch("run", "scenarios/invalid/ten-mistakes.toml").code());
        assertEquals(ExitCode.BAD_INPUT, launch("check", "nowhere.toml").code());
        Said help = launch("--help");
        assertEquals(ExitCode.DONE, help.code());
        assertTrue(help.out().contains("slackwater run"), help.out());
    }
}
