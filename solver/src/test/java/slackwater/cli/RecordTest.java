package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.backend.cpu.CpuBackend;
import slackwater.field.FlowRecord;
import slackwater.field.FlowRecorder;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Overflow;
import slackwater.scenario.Return;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;
import slackwater.scenario.Wall;
import slackwater.simulation.Onlookers;
import slackwater.simulation.Progress;
import slackwater.simulation.RunLimits;
import slackwater.simulation.RunOutcome;
import slackwater.simulation.Simulator;

/** What is recorded is the water that was averaged. Laws, nothing to look up. */
class RecordTest {
    private static final double FLOW_M3_PER_S = 1500 / 3.6e6;

    /** Averages, gusts and balanced frames are the same to the last bit, however many threads there are. */
    @Test
    void threadsChangeNothingInWhatIsAveragedAndRecorded() {
        Recorded one = recorded(1);
        for (int threads : new int[] {2, 3}) {
            Recorded found = recorded(threads);
            FlowStatistics expected = one.run.statistics();
            FlowStatistics statistics = found.run.statistics();
            assertArrayEquals(expected.meanSpeed(), statistics.meanSpeed(), 0);
            assertArrayEquals(expected.rmsSpeed(), statistics.rmsSpeed(), 0);
            assertArrayEquals(expected.standardErrorSpeed(), statistics.standardErrorSpeed(), 0);
            assertArrayEquals(expected.gustWallShear(), statistics.gustWallShear(), 0);
            assertEquals(one.run.quality().massDriftPerMinute(), found.run.quality().massDriftPerMinute(), 0);
            assertEquals(one.run.quality().greatestMach(), found.run.quality().greatestMach(), 0);
            assertEquals(one.record.frames(), found.record.frames());
            for (int frame = 0; frame < one.record.frames(); frame++) {
                assertArrayEquals(one.record.velocity(frame), found.record.velocity(frame));
            }
        }
    }

    private record Recorded(RunOutcome.Averaged run, FlowRecord record) {
    }

    private static Recorded recorded(int threads) {
        Setup setup = Setup.of(tank(), 0.02, 1);
        double batchS = setup.discretisation().plan().batchS();
        FlowRecorder recorder = new FlowRecorder(setup.voxels().grid(), setup.voxels().fluid(), batchS);
        RunOutcome run = Simulator.simulate(setup.discretisation(), List.of(), new RunLimits(5 * batchS),
                new CpuBackend(threads), new Onlookers(Progress.SILENT, recorder));
        return new Recorded((RunOutcome.Averaged) run, recorder.record().orElseThrow());
    }

    private static Scenario tank() {
        return new Scenario("record", new Tank(new Vec3(0.4, 0.3, 0.3), 0.28, 0.04, 0.001), List.of(),
                List.of(),
                Optional.of(new Return(FLOW_M3_PER_S, 0.025, new Vec3(0.06, 0.15, 0.2), 0, 0)),
                Optional.of(new Overflow(Wall.BACK, 0.1, 0.3)), List.of());
    }

    @Test
    void theRecordIsTheWaterThatWasAveraged() {
        Setup setup = Setup.of(tank(), 0.02, 1);
        double batchS = setup.discretisation().plan().batchS();
        FlowRecorder recorder = new FlowRecorder(setup.voxels().grid(), setup.voxels().fluid(), batchS);
        RunOutcome.Averaged run = (RunOutcome.Averaged) Simulator.simulate(setup.discretisation(), List.of(),
                new RunLimits(5 * batchS), new CpuBackend(2), new Onlookers(Progress.SILENT, recorder));
        FlowRecord record = recorder.record().orElseThrow();
        assertEquals(0, record.loopS() / batchS % 1, 1e-6, "whole batches");
        double out = 0;
        for (float share : record.outflowPerS()) {
            out += share * record.grid().cellVolumeM3();
        }
        assertEquals(FLOW_M3_PER_S, out, 1e-6 * FLOW_M3_PER_S, "what leaves is what came in");
        agrees(run.statistics(), record);
    }

    /** Means over the frames, face by face, against the means of the cells beside, over three times as many samples. */
    private static void agrees(FlowStatistics flow, FlowRecord record) {
        Grid grid = record.grid();
        double difference = 0;
        double squares = 0;
        double shear = 0;
        double recordedShear = 0;
        for (int cell = 0; cell < grid.cells(); cell++) {
            double mean = 0;
            for (int frame = 0; frame < record.frames(); frame++) {
                mean += record.velocity(frame)[3 * cell] * record.unitMPerS(frame) / record.frames();
                recordedShear += record.floorShearPa(frame, cell) / record.frames();
            }
            boolean open = cell % grid.nx() > 0 && record.fluid()[cell] && record.fluid()[cell - 1];
            double beside = open ? (flow.meanU()[cell] + flow.meanU()[cell - 1]) / 2 : 0;
            difference += Math.pow(mean - beside, 2);
            squares += beside * beside;
            shear += record.hasFloor(cell) ? flow.wallShear()[cell] : 0;
            assertTrue(flow.gustWallShear()[cell] >= 0 && (flow.wallShear()[cell] > 0
                    || flow.gustWallShear()[cell] == 0), "gusts where there is a wall");
        }
        assertTrue(Math.sqrt(difference / squares) < 0.05, "mean u differs by " + Math.sqrt(difference / squares));
        assertEquals(shear, recordedShear, 0.05 * shear, "shear on the floor");
    }
}
