package slackwater.simulation;

import slackwater.backend.Moments;
import slackwater.backend.Spread;
import slackwater.discretisation.Discretisation;
import slackwater.field.Grid;
import slackwater.field.Snapshot;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.MassSource;
import slackwater.lattice.MixingLength;
import slackwater.units.LatticeUnits;

/** Brings one moment of the lattice to SI units, with what the eddies below a cell do there. */
final class Snapshots {
    /** What a cell takes here: the snapshot, the velocities it is made of, and what balances them. */
    static final long BYTES_PER_CELL = (6 + 3) * Float.BYTES + Continuity.BYTES_PER_CELL;

    private final Spread threads;
    private final Grid grid;
    private final boolean[] solid;
    private final LatticeUnits units;
    private final CollisionOperator operator;
    private final Continuity continuity;
    private final float[][] velocity;
    private final Snapshot now;

    /** @param threads to work on */
    Snapshots(Discretisation discretisation, Spread threads) {
        this.threads = threads;
        this.grid = discretisation.voxels().grid();
        this.solid = discretisation.voxels().solid();
        this.units = discretisation.units();
        this.operator = discretisation.problem().operator();
        int cells = solid.length;
        float[] outflow = new float[cells];
        float[] arriving = new float[cells];
        for (MassSource source : discretisation.problem().massSources()) {
            for (int n = 0; n < source.cells().length; n++) {
                float share = (float) (source.rate() * source.weights()[n] / units.timeStepS());
                arriving[source.cells()[n]] += share;
                outflow[source.cells()[n]] -= Math.min(0, share);
            }
        }
        this.continuity = new Continuity(grid, solid, arriving, threads);
        this.velocity = new float[3][cells];
        this.now = new Snapshot(0, new float[cells], new float[cells], new float[cells], new float[cells],
                new float[cells], outflow);
    }

    Snapshot of(double timeS, Moments moments, float[] wallStress) {
        float speed = (float) units.speedMPerS();
        float stress = (float) units.stressPa();
        threads.over(solid.length, (from, to) -> {
            for (int cell = from; cell < to; cell++) {
                velocity[0][cell] = moments.ux()[cell] * speed;
                velocity[1][cell] = moments.uy()[cell] * speed;
                velocity[2][cell] = moments.uz()[cell] * speed;
                now.wallShear()[cell] = wallStress[cell] * stress;
            }
        });
        continuity.balance(velocity, new float[][] {now.u(), now.v(), now.w()});
        double cellsSquared = grid.cellSizeM() * grid.cellSizeM();
        threads.over(solid.length, (from, to) -> {
            for (int cell = from; cell < to; cell++) {
                now.eddyViscosityM2PerS()[cell] = solid[cell] ? 0 : (float) (eddyViscosity(cell) * cellsSquared);
            }
        });
        return new Snapshot(timeS, now.u(), now.v(), now.w(), now.wallShear(), now.eddyViscosityM2PerS(),
                now.outflowPerS());
    }

    /** l^2 |S| with |S| = sqrt(2 S_ab S_ab) from central differences, cells squared a second. */
    private double eddyViscosity(int cell) {
        int[] step = {1, grid.nx(), grid.nx() * grid.ny()};
        int[] at = {cell % grid.nx(), cell / grid.nx() % grid.ny(), cell / step[2]};
        int[] count = {grid.nx(), grid.ny(), grid.nz()};
        double[][] slope = new double[3][3];
        boolean atWall = false;
        for (int axis = 0; axis < 3; axis++) {
            int up = at[axis] + 1 < count[axis] && !solid[cell + step[axis]] ? cell + step[axis] : cell;
            int down = at[axis] > 0 && !solid[cell - step[axis]] ? cell - step[axis] : cell;
            boolean surface = axis == 2 && at[2] + 1 == count[2];
            atWall |= down == cell || up == cell && !surface;
            double length = (up == down ? 1 : up == cell || down == cell ? 1 : 2) * grid.cellSizeM();
            for (int along = 0; along < 3; along++) {
                slope[along][axis] = (velocity[along][up] - velocity[along][down]) / length;
            }
        }
        double squares = 0;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                double strain = (slope[a][b] + slope[b][a]) / 2;
                squares += 2 * strain * strain;
            }
        }
        double length = MixingLength.of(operator, atWall);
        return length * length * Math.sqrt(squares);
    }
}
