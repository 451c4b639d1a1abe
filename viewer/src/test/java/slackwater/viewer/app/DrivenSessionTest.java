package slackwater.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.viewer.gl.Graphics;

/** The window on a real X server of its own, Xvfb; what happens there is in {@link DrivenSession}. */
class DrivenSessionTest {
    private static final long PATIENCE_S = 300;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"1", "1.5"})
    void aPersonMeasuresDragsUndoesSavesAndLeaves(String scale) throws Exception {
        Path file = folder.resolve("nano-30.toml");
        Files.copy(Path.of("..", "scenarios", "nano-30.toml"), file);
        Process server = server();
        try {
            Result result = java(Optional.of(display(server)), "slackwater.viewer.app.DrivenSession",
                    file.getFileName().toString(), scale);
            assertTrue(result.output().contains("the session went well"), result.output());
            assertEquals(0, result.code(), result.output());
        } finally {
            server.destroy();
        }
    }

    @Test
    void aPersonDragsInTheDifferenceOfTwoTanks() throws Exception {
        Path file = folder.resolve("nano-30.toml");
        Files.copy(Path.of("..", "scenarios", "nano-30.toml"), file);
        Process server = server();
        try {
            Result result = java(Optional.of(display(server)), "slackwater.viewer.app.DrivenComparison",
                    file.getFileName().toString(), "1400", "1050");
            assertTrue(result.output().contains("the comparison went well"), result.output());
            assertEquals(0, result.code(), result.output());
        } finally {
            server.destroy();
        }
    }

    /** Without a screen: one sentence that names what to install, exit code 2, no stack trace. */
    @Test
    void withoutAScreenItSaysWhatToInstall() throws Exception {
        Files.copy(Path.of("..", "scenarios", "nano-30.toml"), folder.resolve("nano-30.toml"));
        Result result = java(Optional.empty(), "slackwater.viewer.app.Program", "view", "nano-30.toml");
        assertEquals(2, result.code(), result.output());
        List<String> lines = lines(result);
        assertEquals(1, lines.size(), result.output());
        assertTrue(lines.get(0).contains("apt-get install xvfb libegl1 libgl1-mesa-dri"), result.output());
    }

    /** A screen, but no library to draw with (named so that it is not found): the same. */
    @Test
    void withoutADriverItSaysWhatToInstall() throws Exception {
        Files.copy(Path.of("..", "scenarios", "nano-30.toml"), folder.resolve("nano-30.toml"));
        Process server = server();
        try {
            Result result = java(Optional.of(display(server)), "-Dorg.lwjgl.opengl.libname=libnothing-of-this-name.so",
                    "-Dorg.lwjgl.egl.libname=libnothing-of-this-name.so", "slackwater.viewer.app.Program", "view",
                    "nano-30.toml");
            assertEquals(2, result.code(), result.output());
            List<String> lines = lines(result);
            assertEquals(1, lines.size(), result.output());
            assertTrue(lines.get(0).contains("apt-get install libegl1 libgl1-mesa-dri"), result.output());
        } finally {
            server.destroy();
        }
    }

    /** What is wrong with what was asked for is told before a window opens. */
    @Test
    void faultsAreToldInTheTerminal() throws Exception {
        Files.writeString(folder.resolve("bad.toml"), "name = 3\n");
        for (String[] wrong : new String[][] {{"bad.toml", "bad.toml:1 name"}, {"gone.toml", "gone.toml is missing"},
            {"--cell-cm=99", "--cell-cm: found 99.0, must be 0.5 to 10"}, {".", "has no result.json"}}) {
            Result result = java(Optional.empty(), "slackwater.viewer.app.Program", "view",
                    wrong[0].startsWith("--") ? "bad.toml" : wrong[0], wrong[0]);
            assertEquals(2, result.code(), result.output());
            assertTrue(result.output().contains(wrong[1]) && !result.output().contains("\tat "), result.output());
        }
    }

    /** What was said, without the line that Java itself prints. */
    private static List<String> lines(Result result) {
        return result.output().lines().filter(line -> !line.startsWith("WARNING: Using incub")).toList();
    }

    private record Result(int code, String output) {
    }

    private Result java(Optional<String> display, String main, String... arguments) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--add-modules", "jdk.incubator.vector", "-Xmx1g", "-cp", classPath(), main);
        builder.command().addAll(List.of(arguments));
        builder.directory(folder.toFile()).redirectErrorStream(true);
        builder.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY", "XDG_SESSION_TYPE"));
        builder.environment().put("XDG_RUNTIME_DIR", folder.toString());
        display.ifPresent(name -> builder.environment().put("DISPLAY", name));
        File output = folder.resolve("output.txt").toFile();
        Process process = builder.redirectOutput(output).start();
        boolean ended = process.waitFor(PATIENCE_S, TimeUnit.SECONDS);
        process.destroyForcibly();
        String text = Files.readString(output.toPath(), StandardCharsets.UTF_8);
        return new Result(ended ? process.exitValue() : -1, text);
    }

    /** This test's class path, in full, since the process runs elsewhere. */
    private static String classPath() {
        return String.join(File.pathSeparator, List.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .stream().map(part -> Path.of(part).toAbsolutePath().toString()).toList());
    }

    private static Process server() {
        try {
            return new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1400x1050x24", "-nolisten", "tcp")
                    .redirectError(ProcessBuilder.Redirect.DISCARD).start();
        } catch (IOException missing) {
            Graphics.missing("Xvfb is not installed: apt-get install xvfb libegl1 libgl1-mesa-dri");
            throw new IllegalStateException(missing);
        }
    }

    /** The name of the server's screen, which it prints when it is ready. */
    private static String display(Process server) throws IOException {
        BufferedReader reader = server.inputReader();
        return ":" + Optional.ofNullable(reader.readLine()).orElseThrow(() -> new IOException("Xvfb did not start"));
    }
}
