package slackwater.detritus;

import slackwater.field.FlowRecord;
import slackwater.field.Grid;

/**
 * Reads a recorded flow between the faces of its cells and between frames, in cells and seconds. Inside a cell the
 * velocity is the polynomial that has at every face the recorded flow, with the slopes along it that the neighbouring
 * faces show, and no divergence anywhere (the divergence-free reconstruction of [Balsara2001]): so what is mixed stays
 * mixed. Through walls nothing flows. One for each thread.
 */
final class Water {
    private final FlowRecord record;
    private final Grid grid;
    private final boolean[] fluid;
    private final byte[] open;
    private final int[] count;
    private final int[] step;
    /** Mean of the two faces across an axis, and their difference: of the flow, and of its slopes along the axes. */
    private final double[][] mean = new double[3][4];
    private final double[][] change = new double[3][4];
    private final int[] at = new int[3];
    private short[] before = new short[0];
    private short[] after = new short[0];
    private double beforeUnit;
    private double afterUnit;
    private double early;
    private double late;
    /** Velocity of the last {@link #read}, cells a second. */
    double u;
    double v;
    double w;

    Water(FlowRecord record) {
        this(record, open(record));
    }

    private Water(FlowRecord record, byte[] open) {
        this.record = record;
        this.grid = record.grid();
        this.fluid = record.fluid();
        this.count = new int[] {grid.nx(), grid.ny(), grid.nz()};
        this.step = new int[] {1, grid.nx(), grid.nx() * grid.ny()};
        this.open = open;
    }

    /** The same water for another thread. */
    Water again() {
        return new Water(record, open);
    }

    /** One bit an axis for each cell: whether there is water on both sides of its face towards smaller x, y, z. */
    private static byte[] open(FlowRecord record) {
        Grid grid = record.grid();
        boolean[] fluid = record.fluid();
        byte[] open = new byte[fluid.length];
        for (int cell = 0; cell < open.length; cell++) {
            int layer = grid.nx() * grid.ny();
            boolean x = cell % grid.nx() > 0 && fluid[cell - 1];
            boolean y = cell / grid.nx() % grid.ny() > 0 && fluid[cell - grid.nx()];
            boolean z = cell >= layer && fluid[cell - layer];
            open[cell] = (byte) (fluid[cell] ? (x ? 1 : 0) + (y ? 2 : 0) + (z ? 4 : 0) : 0);
        }
        return open;
    }

    /** Turns to the time between a frame and the next. */
    void turnTo(int frame) {
        int next = (frame + 1) % record.frames();
        before = record.velocity(frame);
        after = record.velocity(next);
        beforeUnit = record.unitMPerS(frame) / grid.cellSizeM();
        afterUnit = record.unitMPerS(next) / grid.cellSizeM();
    }

    int cell(double x, double y, double z) {
        return ((int) z * grid.ny() + (int) y) * grid.nx() + (int) x;
    }

    /** Whether a place is inside the tank and in water. */
    boolean isWater(double x, double y, double z) {
        return x >= 0 && y >= 0 && z >= 0 && x < grid.nx() && y < grid.ny() && z < grid.nz() && fluid[cell(x, y, z)];
    }

    /** Reads the velocity at a place in water, a share of the way from the frame to the next. */
    void read(double x, double y, double z, double share) {
        early = (1 - share) * beforeUnit;
        late = share * afterUnit;
        at[0] = (int) x;
        at[1] = (int) y;
        at[2] = (int) z;
        int home = (at[2] * grid.ny() + at[1]) * grid.nx() + at[0];
        for (int axis = 0; axis < 3; axis++) {
            faces(home, axis);
        }
        double a = x - at[0] - 0.5;
        double b = y - at[1] - 0.5;
        double c = z - at[2] - 0.5;
        u = along(0, a, b, c, (change[1][1] + change[2][1]) / 2);
        v = along(1, b, a, c, (change[0][2] + change[2][2]) / 2);
        w = along(2, c, a, b, (change[0][3] + change[1][3]) / 2);
    }

    /** @param bulge what takes away the divergence that the slopes of the other two components leave */
    private double along(int axis, double across, double one, double other, double bulge) {
        double[] m = mean[axis];
        double[] d = change[axis];
        int first = axis == 0 ? 2 : 1;
        int second = axis == 2 ? 2 : 3;
        return m[0] + across * d[0] + one * (m[first] + across * d[first]) + other * (m[second] + across * d[second])
                - bulge * (across * across - 0.25);
    }

    /** Puts down mean and difference of the faces across an axis: flow, then slopes along x, y, z. */
    private void faces(int home, int axis) {
        int far = home + step[axis];
        boolean lower = (open[home] >> axis & 1) != 0;
        boolean upper = at[axis] + 1 < count[axis] && (open[far] >> axis & 1) != 0;
        double near = lower ? flow(home, axis) : 0;
        double next = upper ? flow(far, axis) : 0;
        mean[axis][0] = (near + next) / 2;
        change[axis][0] = next - near;
        for (int side = 0; side < 3; side++) {
            if (side != axis) {
                double one = lower ? slope(home, axis, side, near) : 0;
                double other = upper ? slope(far, axis, side, next) : 0;
                mean[axis][side + 1] = (one + other) / 2;
                change[axis][side + 1] = other - one;
            }
        }
    }

    /** How the flow through a face changes from face to face along a side, as far as those are open. */
    private double slope(int cell, int axis, int side, double here) {
        double sum = 0;
        int ahead = cell + step[side];
        int behind = cell - step[side];
        if (at[side] + 1 < count[side] && (open[ahead] >> axis & 1) != 0) {
            sum += flow(ahead, axis) - here;
        }
        if (at[side] > 0 && (open[behind] >> axis & 1) != 0) {
            sum += here - flow(behind, axis);
        }
        return sum / 2;
    }

    private double flow(int cell, int axis) {
        int from = 3 * cell + axis;
        return early * before[from] + late * after[from];
    }
}
