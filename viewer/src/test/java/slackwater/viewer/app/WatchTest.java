package slackwater.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.cli.ExitCode;
import slackwater.cli.Main;

/** What the command for the window refuses before it opens one. */
class WatchTest {
    @TempDir
    private Path folder;

    @Test
    void threeTanksAreTooMany() {
        StringWriter err = new StringWriter();
        String nano = Path.of("..", "scenarios", "nano-30.toml").toString();
        int code = Main.run(new PrintWriter(new StringWriter(), true), new PrintWriter(err, true), Program.extras(),
                "view", nano, nano, nano);
        assertEquals(ExitCode.BAD_INPUT, code, err.toString());
        assertTrue(err.toString().startsWith("found 3 tanks, must be one or two"), err.toString());
    }

    /** A tank of 3.75 m3 on cells of half a centimetre, 30 million of them: refused, as a run refuses it. */
    @Test
    void cellsThatNeedMoreMemoryThanThereIsAreRefused() throws IOException {
        Path large = folder.resolve("large.toml");
        Files.writeString(large, """
                name = "large"
                [tank]
                inside_cm = [300, 125, 105]
                water_level_cm = 100

                [[pump]]
                name = "left"
                flow_l_per_h = 8000
                outlet_mm = 60
                at_cm = [4, 60, 50]
                yaw_deg = 0
                pitch_deg = 0
                """);
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(new StringWriter(), true), new PrintWriter(err, true), Program.extras(),
                "view", large.toString(), "--cell-cm", "0.5");
        assertEquals(ExitCode.BAD_INPUT, code, err.toString());
        assertTrue(err.toString().startsWith("30 million cells of 0.500 cm need about"), err.toString());
        assertTrue(err.toString().contains("SLACKWATER_MEMORY"), err.toString());
    }
}
