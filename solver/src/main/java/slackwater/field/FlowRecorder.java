package slackwater.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Keeps the water as it moves, up to a fixed amount of memory: whole batches, about {@value #WANTED_S} s of water in
 * frames {@value #FINEST_S} s apart where there is room, at least one batch in frames as close as there is room for.
 */
public final class FlowRecorder implements FlowObserver {
    private static final double WANTED_S = 30;
    private static final double FINEST_S = 0.2;
    private static final double ROOM_BYTES = 256e6;
    private static final int FEWEST = 32;
    private static final int MOST = 256;
    private static final int BYTES_PER_CELL = 3 * Short.BYTES;
    private static final double NEARLY = 1e-6;

    private final Floors floors;
    private final double batchS;
    private final double intervalS;
    private final double enoughS;
    private final List<Double> timeS = new ArrayList<>();
    private final List<short[]> velocity = new ArrayList<>();
    private final List<Float> unit = new ArrayList<>();
    private final List<float[]> shear = new ArrayList<>();
    private final float[] eddySum;
    private float[] outflow = new float[0];
    private double nextS;
    private double lastS;

    /**
     * @param fluid true where there is water
     * @param batchS a whole number of pump periods, seconds
     */
    public FlowRecorder(Grid grid, boolean[] fluid, double batchS) {
        this.floors = Floors.of(grid, fluid);
        this.batchS = batchS;
        double room = most(grid.cells()) * FINEST_S;
        double batches = Math.max(1, Math.floor(Math.min(room, Math.max(WANTED_S, batchS)) / batchS));
        this.enoughS = batches * batchS;
        this.intervalS = Math.max(FINEST_S, enoughS / most(grid.cells()));
        this.eddySum = new float[grid.cells()];
    }

    /** Bytes that a record of this many cells takes at most, its making included. */
    public static long bytes(long cells) {
        return cells * (most(cells) * BYTES_PER_CELL + 9L * Float.BYTES);
    }

    private static long most(long cells) {
        return (long) Math.max(FEWEST, Math.min(MOST, ROOM_BYTES / BYTES_PER_CELL / cells));
    }

    @Override
    public boolean wants(double nowS) {
        lastS = nowS;
        boolean fits = eddySum.length <= Integer.MAX_VALUE / 3;
        return fits && nowS <= enoughS * (1 + NEARLY) && nowS >= nextS * (1 - NEARLY);
    }

    @Override
    public void see(Snapshot now) {
        nextS = timeS.isEmpty() ? now.timeS() + intervalS : nextS + intervalS;
        timeS.add(now.timeS());
        Packed packed = Packed.of(now);
        for (int cell = 0; cell < eddySum.length; cell++) {
            eddySum[cell] += now.eddyViscosityM2PerS()[cell];
        }
        velocity.add(packed.velocity());
        unit.add(packed.unitMPerS());
        shear.add(floors.of(now.wallShear()));
        outflow = now.outflowPerS().clone();
    }

    /** The whole batches that were seen; empty if there was none. */
    public Optional<FlowRecord> record() {
        double loopS = batchS * Math.floor(Math.min(lastS, enoughS) / batchS * (1 + NEARLY));
        int frames = (int) timeS.stream().filter(time -> time <= loopS * (1 + NEARLY)).count();
        if (frames == 0) {
            return Optional.empty();
        }
        double[] times = new double[frames];
        float[] units = new float[frames];
        for (int n = 0; n < frames; n++) {
            times[n] = timeS.get(n);
            units[n] = unit.get(n);
        }
        float[] eddies = new float[eddySum.length];
        for (int cell = 0; cell < eddies.length; cell++) {
            eddies[cell] = eddySum[cell] / timeS.size();
        }
        var kept = new FlowRecord.Frames(times, velocity.subList(0, frames).toArray(short[][]::new), units,
                shear.subList(0, frames).toArray(float[][]::new));
        return Optional.of(new FlowRecord(floors, loopS, kept, eddies, outflow));
    }
}
