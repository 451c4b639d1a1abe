package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;

class PointReadingTest {
    private static final Grid GRID = new Grid(4, 4, 4, 0.1);

    @Test
    void readsWhatIsThere() {
        PointReading reading = PointReading.of(flow(0.03f, 0.04f, 0, 0.06f), new Vec3(0.2, 0.2, 0.2)).orElseThrow();
        assertEquals(0.06, reading.meanMPerS(), 1e-7);
        assertEquals(0.07, reading.rmsMPerS(), 1e-7);
        assertEquals(0.05, reading.velocity().length(), 1e-7);
        assertEquals("to the right, to the back", reading.direction());
        assertEquals("yaw 53\u00b0, pitch 0\u00b0", reading.angles());
    }

    @Test
    void saysWhereTheWaterGoes() {
        assertEquals("to the left, slightly up", direction(-0.1f, 0, 0.04f));
        assertEquals("down", direction(0, 0.01f, -0.1f));
        assertEquals("to the front", direction(0, -0.1f, 0.02f));
        assertEquals("to and fro", PointReading.of(flow(0.001f, 0, 0, 0.06f), new Vec3(0.2, 0.2, 0.2)).orElseThrow()
                .direction());
    }

    @Test
    void thereIsNothingToReadOutsideTheWater() {
        assertTrue(PointReading.of(flow(0, 0, 0, 0), new Vec3(0.2, 0.2, 0.45)).isEmpty());
        assertTrue(PointReading.of(flow(0, 0, 0, 0), new Vec3(-0.01, 0.2, 0.2)).isEmpty());
    }

    private static String direction(float u, float v, float w) {
        return PointReading.of(flow(u, v, w, 0.1f), new Vec3(0.2, 0.2, 0.2)).orElseThrow().direction();
    }

    private static FlowStatistics flow(float u, float v, float w, float speed) {
        boolean[] fluid = new boolean[GRID.cells()];
        Arrays.fill(fluid, true);
        return new FlowStatistics(GRID, fluid, all(u), all(v), all(w), all(speed), all(speed + 0.01f), all(0), all(0),
                all(0));
    }

    private static float[] all(float value) {
        float[] all = new float[GRID.cells()];
        Arrays.fill(all, value);
        return all;
    }
}
