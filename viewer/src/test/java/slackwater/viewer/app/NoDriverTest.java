package slackwater.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.cli.ExitCode;

/** A machine without driver and screen, made by naming a library that is not there; each in a process of its own. */
class NoDriverTest {
    private static final String MISSING = "-Dorg.lwjgl.egl.libname=libnothing-of-this-name.so";

    @TempDir
    private Path folder;

    private record Said(int code, String out, String err) {
    }

    private Said program(String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "--add-modules",
                "jdk.incubator.vector", MISSING, "-cp", System.getProperty("java.class.path"),
                Program.class.getName()));
        command.addAll(List.of(words));
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder process = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        process.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
        int code = process.start().waitFor();
        String said = Files.readString(err, StandardCharsets.UTF_8)
                .replaceFirst("WARNING: Using incubator modules.*\\R", "");
        return new Said(code, Files.readString(out, StandardCharsets.UTF_8), said);
    }

    @Test
    void aPictureIsRefusedWithOneSentenceThatSaysWhatToInstall() throws IOException, InterruptedException {
        Path target = folder.resolve("x.png");
        Said said = program("picture", "../scenarios/nano-30.toml", "--out", target.toString());
        assertEquals("No picture can be drawn, the library EGL was not found: install an OpenGL driver with EGL (on"
                + " Debian and Ubuntu: apt-get install libegl1 libgl1-mesa-dri).", said.err().strip());
        assertEquals(ExitCode.BAD_INPUT, said.code());
        assertTrue(Files.notExists(target));
    }

    /** The report does not need OpenGL: it is written with its slices, and says so. */
    @Test
    void aReportIsWrittenAllTheSame() throws IOException, InterruptedException {
        Path target = folder.resolve("run");
        Said said = program("run", "../scenarios/nano-30.toml", "--cell-cm", "4", "--one-grid", "--max-seconds", "1",
                "--out", target.toString());
        assertTrue(said.out().contains("Slices only: No picture can be drawn"), said.out() + said.err());
        String page = Files.readString(target.resolve("report.html"));
        assertTrue(page.contains("Slices only: No picture can be drawn") && !page.contains("<img"), "report");
        assertTrue(page.contains("<svg"), "slices");
    }
}
