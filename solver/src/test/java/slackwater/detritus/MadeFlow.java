package slackwater.detritus;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import slackwater.field.FlowRecord;
import slackwater.field.FlowRecorder;
import slackwater.field.Grid;
import slackwater.field.Snapshot;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;

/** A box of water with a flow given by formulas, recorded as a run would have been. */
final class MadeFlow {
    final Grid grid;
    final boolean[] fluid;
    final Snapshot now;

    MadeFlow(int nx, int ny, int nz, double cellSizeM) {
        grid = new Grid(nx, ny, nz, cellSizeM);
        fluid = new boolean[grid.cells()];
        Arrays.fill(fluid, true);
        now = new Snapshot(0, values(), values(), values(), values(), values(), values());
    }

    private float[] values() {
        return new float[grid.cells()];
    }

    MadeFlow fill(float[] values, ToDoubleFunction<Vec3> formula) {
        for (int cell = 0; cell < values.length; cell++) {
            values[cell] = fluid[cell] ? (float) formula.applyAsDouble(grid.centreM(cell)) : 0;
        }
        return this;
    }

    /** Fills in a velocity where it is kept: along each axis in the faces towards smaller x, y and z. */
    MadeFlow stream(ToDoubleFunction<Vec3> u, ToDoubleFunction<Vec3> v, ToDoubleFunction<Vec3> w) {
        double half = grid.cellSizeM() / 2;
        return fill(now.u(), at -> u.applyAsDouble(at.plus(new Vec3(-half, 0, 0))))
                .fill(now.v(), at -> v.applyAsDouble(at.plus(new Vec3(0, -half, 0))))
                .fill(now.w(), at -> w.applyAsDouble(at.plus(new Vec3(0, 0, -half))));
    }

    /** The flow as it is, for ever, in frames a fifth of a second apart. */
    FlowRecord steady() {
        return recorded(List.of(1.0));
    }

    /** The flow, its velocities multiplied by a factor in each of some frames a fifth of a second apart. */
    FlowRecord recorded(List<Double> factors) {
        FlowRecorder recorder = new FlowRecorder(grid, fluid, 0.2 * factors.size());
        for (int n = 0; n < factors.size(); n++) {
            double factor = factors.get(n);
            double timeS = 0.2 * (n + 1);
            if (recorder.wants(timeS)) {
                recorder.see(new Snapshot(timeS, times(now.u(), factor), times(now.v(), factor),
                        times(now.w(), factor), now.wallShear(), now.eddyViscosityM2PerS(), now.outflowPerS()));
            }
        }
        return recorder.record().orElseThrow();
    }

    private static float[] times(float[] values, double factor) {
        float[] product = values.clone();
        for (int cell = 0; cell < product.length; cell++) {
            product[cell] *= (float) factor;
        }
        return product;
    }

    /** A tank that fits the box, with a bare bottom. */
    Scenario tank(Coral... corals) {
        return tank(0, List.of(), corals);
    }

    Scenario tank(double sandM, List<Rock> rocks, Coral... corals) {
        Vec3 inside = new Vec3(grid.nx(), grid.ny(), grid.nz()).times(grid.cellSizeM());
        return new Scenario("made", new Tank(inside, inside.z(), sandM, 0.0005), rocks, List.of(), Optional.empty(),
                Optional.empty(), List.of(corals));
    }

    /** A grain without any spread. */
    static Grain grain(double settlingMPerS, double liftPa) {
        return new Grain("test", 0.001, 1100, settlingMPerS, 0, liftPa, liftPa, liftPa, 0, "made up");
    }

    static Drift follow(Scenario tank, FlowRecord record, Release release, double lengthS) {
        return Tracker.follow(tank, record, List.of(release), new Schedule(lengthS, lengthS, List.of(lengthS)),
                new Tracker.Chance(1, 2));
    }
}
