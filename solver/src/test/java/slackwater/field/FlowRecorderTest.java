package slackwater.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class FlowRecorderTest {
    private static final Grid GRID = new Grid(3, 2, 2, 0.01);

    @Test
    void keepsWholeBatchesInEvenFrames() {
        FlowRecorder recorder = new FlowRecorder(GRID, water(), 4);
        show(recorder, 11.3);
        FlowRecord record = recorder.record().orElseThrow();
        assertEquals(8, record.loopS(), 1e-9, "two batches of 4 s, the third was not whole");
        double sum = 0;
        for (int frame = 0; frame < record.frames(); frame++) {
            sum += record.stepS(frame);
            assertTrue(record.stepS(frame) > 0 && record.stepS(frame) < 0.21, "frames 0.2 s apart, samples 0.05 s");
        }
        assertEquals(8, sum, 1e-9, "the frames go once round");
    }

    @Test
    void stopsWhenItHasEnough() {
        FlowRecorder recorder = new FlowRecorder(GRID, water(), 4);
        show(recorder, 100);
        assertEquals(28, recorder.record().orElseThrow().loopS(), 1e-9, "7 batches of 4 s are the most below 30 s");
    }

    @Test
    void aLongPeriodIsKeptWholeInWiderFrames() {
        FlowRecorder recorder = new FlowRecorder(GRID, water(), 60);
        show(recorder, 61);
        FlowRecord record = recorder.record().orElseThrow();
        assertEquals(60, record.loopS(), 1e-9);
        assertTrue(record.frames() <= 256 && record.frames() > 200, record.frames() + " frames");
    }

    @Test
    void nothingWholeIsNoRecord() {
        FlowRecorder recorder = new FlowRecorder(GRID, water(), 4);
        show(recorder, 3.9);
        assertTrue(recorder.record().isEmpty());
    }

    @Test
    void velocitiesAreRightToTheLastOfSixteenBits() {
        FlowRecorder recorder = new FlowRecorder(GRID, water(), 0.05);
        Snapshot now = snapshot(0.05);
        for (int cell = 0; cell < GRID.cells(); cell++) {
            now.u()[cell] = (float) Math.sin(cell);
            now.w()[cell] = -0.3f * cell / GRID.cells();
            now.wallShear()[cell] = cell;
        }
        assertTrue(recorder.wants(0.05));
        recorder.see(now);
        FlowRecord record = recorder.record().orElseThrow();
        float greatest = 0;
        for (float u : now.u()) {
            greatest = Math.max(greatest, Math.abs(u));
        }
        for (int cell = 0; cell < GRID.cells(); cell++) {
            float unit = record.unitMPerS(0);
            assertEquals(now.u()[cell], record.velocity(0)[3 * cell] * unit, greatest / 65_000);
            assertEquals(0, record.velocity(0)[3 * cell + 1]);
            assertEquals(now.w()[cell], record.velocity(0)[3 * cell + 2] * unit, greatest / 65_000);
            boolean floor = cell < 6;
            assertEquals(floor, record.hasFloor(cell));
            assertEquals(floor ? cell : 0, record.floorShearPa(0, cell));
        }
    }

    @Test
    void takesNoMoreRoomThanItSays() {
        assertTrue(FlowRecorder.bytes(300_000) < 256e6 * 1.1);
        assertTrue(FlowRecorder.bytes(2_300_000) < 2_300_000L * 240);
    }

    private static void show(FlowRecorder recorder, double untilS) {
        for (int n = 1; n * 0.05 <= untilS + 1e-9; n++) {
            if (recorder.wants(n * 0.05)) {
                recorder.see(snapshot(n * 0.05));
            }
        }
    }

    private static Snapshot snapshot(double timeS) {
        int cells = GRID.cells();
        return new Snapshot(timeS, new float[cells], new float[cells], new float[cells], new float[cells],
                new float[cells], new float[cells]);
    }

    private static boolean[] water() {
        boolean[] fluid = new boolean[GRID.cells()];
        Arrays.fill(fluid, true);
        return fluid;
    }
}
