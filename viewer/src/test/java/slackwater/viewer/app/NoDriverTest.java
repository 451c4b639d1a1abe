package slackwater.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
        return program(MISSING, Map.of(), words);
    }

    private Said program(String property, Map<String, String> environment, String... words)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "--add-modules",
                "jdk.incubator.vector", property, "-cp", System.getProperty("java.class.path"),
                Program.class.getName()));
        command.addAll(List.of(words));
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder process = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        process.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
        process.environment().putAll(environment);
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

    /** A driver that opens and then knows no shaders of this version: Mesa's own switch makes it such a one. */
    @Test
    void aRunIsKeptWhereADriverFailsLater() throws IOException, InterruptedException {
        Map<String, String> poor = Map.of("MESA_GLSL_VERSION_OVERRIDE", "130");
        Path picture = folder.resolve("x.png");
        Said said = program("-Dslackwater.test=poor", poor, "picture", "../scenarios/nano-30.toml", "--out",
                picture.toString());
        assumeTrue(Files.notExists(picture), "left out: this driver knows no such switch");
        assertEquals(ExitCode.BAD_INPUT, said.code(), said.err());
        assertTrue(said.err().startsWith("No picture can be drawn, ") && said.err().strip().lines().count() == 1,
                said.err());
        Path target = folder.resolve("run");
        Said ran = program("-Dslackwater.test=poor", poor, "run", "../scenarios/nano-30.toml", "--cell-cm", "4",
                "--one-grid", "--max-seconds", "1", "--out", target.toString());
        assertTrue(ran.out().contains("Slices only: No picture can be drawn"), ran.out() + ran.err());
        assertTrue(Files.exists(target.resolve("report.html")), "the run is not lost");
    }
}
