package slackwater.field;

import java.util.Optional;

/**
 * The water between the last two moments that were seen: for somebody who follows it as it goes on, and keeps none of
 * it.
 */
public final class Passage {
    private final Floors floors;
    private Optional<Moment> before = Optional.empty();
    private Optional<Moment> last = Optional.empty();
    private float[] outflowPerS = new float[0];

    /** One of the two, in arrays of its own. */
    private record Moment(double timeS, Packed velocity, float[] floorShearPa, float[] eddyViscosityM2PerS) {
    }

    /** @param fluid true where there is water */
    public Passage(Grid grid, boolean[] fluid) {
        this.floors = Floors.of(grid, fluid);
    }

    /** Copies one moment; it must be later than the one before. */
    public void see(Snapshot now) {
        before = last;
        last = Optional.of(new Moment(now.timeS(), Packed.of(now), floors.of(now.wallShear()),
                now.eddyViscosityM2PerS().clone()));
        outflowPerS = now.outflowPerS().clone();
    }

    /** A record of two frames, the eddies the mean of both; empty before two moments were seen. */
    public Optional<FlowRecord> record() {
        return before.flatMap(from -> last.map(to -> between(from, to)));
    }

    private FlowRecord between(Moment from, Moment to) {
        float[] eddies = new float[from.eddyViscosityM2PerS().length];
        for (int cell = 0; cell < eddies.length; cell++) {
            eddies[cell] = (from.eddyViscosityM2PerS()[cell] + to.eddyViscosityM2PerS()[cell]) / 2;
        }
        var frames = new FlowRecord.Frames(new double[] {from.timeS(), to.timeS()},
                new short[][] {from.velocity().velocity(), to.velocity().velocity()},
                new float[] {from.velocity().unitMPerS(), to.velocity().unitMPerS()},
                new float[][] {from.floorShearPa(), to.floorShearPa()});
        return new FlowRecord(floors, to.timeS() - from.timeS(), frames, eddies, outflowPerS);
    }
}
