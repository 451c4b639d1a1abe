package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.Tanks;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Units;
import slackwater.viewer.scene.Water;

/** What is shown of all tanks alike. */
class ShowingTest {
    /** The person says from which speed water is fast; the same holds for every water until it is taken back. */
    @Test
    void fastWaterBeginsWhereThePersonSays(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("nano-30.toml");
        Files.copy(Tanks.FOLDER.resolve("nano-30.toml"), file);
        try (Session session = new Session(List.of(Side.live(ScenarioFile.open(file), () -> 0.0254, 1)),
                Units.METRIC)) {
            session.perform(Action.PAUSE);
            check(session);
        }
    }

    private static void check(Session session) {
        Showing showing = session.showing();
        Grid grid = new Grid(10, 1, 1, 0.1);
        float[] none = new float[10];
        float[] speeds = {0.01f, 0.02f, 0.03f, 0.04f, 0.05f, 0.06f, 0.07f, 0.08f, 0.09f, 0.2f};
        boolean[] fluid = new boolean[10];
        Arrays.fill(fluid, true);
        Water water = new Water(new FlowStatistics(grid, fluid, none, none, none, speeds, none, none, none, none),
                none, true);
        double own = showing.fastMPerS(water);
        assertTrue(own >= 0.09 && own <= 0.2, "nine tenths are slower than " + own);
        showing.fastFrom(0.1);
        session.perform(Action.FAST_MORE);
        assertTrue(showing.shows(Layer.FAST_WATER));
        assertEquals(0.11, showing.fastMPerS(water), 1e-12);
        session.perform(Action.FAST_LESS);
        session.perform(Action.FAST_LESS);
        assertEquals(0.09, showing.fastMPerS(water), 1e-12);
        session.perform(Action.UNITS);
        session.perform(Action.FAST_MORE);
        assertEquals(4 * 0.0254, showing.fastMPerS(water), 1e-12, "0.09 m/s lies next to 3.5 in/s");
        showing.fastByItself();
        assertEquals(own, showing.fastMPerS(water));
    }
}
