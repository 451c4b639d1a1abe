package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.edit.Tanks;
import slackwater.viewer.scene.Units;

/** A session of one tank, a copy of the example, without a window. */
abstract class AtTheTerrace {
    @TempDir
    Path folder;
    Path file;
    Session session;

    @BeforeEach
    void open() throws Exception {
        file = folder.resolve("terrace-120.toml");
        Files.copy(Tanks.FOLDER.resolve("terrace-120.toml"), file);
        session = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.04, 1)), Units.METRIC);
        session.resize(new Frame(1200, 800, 1));
    }

    @AfterEach
    void close() {
        session.close();
    }

    /** Tests must leave the examples alone: an open layout keeps its draft beside its file. */
    @AfterAll
    static void theExamplesAreAsTheyWere() throws Exception {
        try (Stream<Path> all = Files.walk(Tanks.FOLDER)) {
            assertEquals(List.of(), all.filter(one -> one.getFileName().toString().startsWith(".")
                    && !one.equals(Tanks.FOLDER)).toList());
        }
    }

    void press(int... codes) {
        for (int code : codes) {
            assertTrue(session.key(Stroke.of(code), false), "key " + code + " means nothing");
        }
    }

    Scenario now() {
        return session.side().scenario();
    }

    Pump pump() {
        return now().pumps().get(0);
    }
}
