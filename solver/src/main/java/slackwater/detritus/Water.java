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
    private final Openings openings;
    private final Faces acrossX;
    private final Faces acrossY;
    private final Faces acrossZ;
    /** The cell that was looked at last; -1 after a turn to other frames. A grain reads the same one several times. */
    private int looked = -1;
    private double beforeUnit;
    private double afterUnit;
    /** Velocity of the last {@link #read}, cells a second. */
    double u;
    double v;
    double w;

    Water(FlowRecord record) {
        this(record, new Openings(record.grid(), record.fluid()));
    }

    Water(FlowRecord record, Openings openings) {
        this.record = record;
        this.grid = record.grid();
        this.fluid = record.fluid();
        this.openings = openings;
        this.acrossX = new Faces(grid, 0);
        this.acrossY = new Faces(grid, 1);
        this.acrossZ = new Faces(grid, 2);
    }

    /** The same water for another thread. */
    Water again() {
        return new Water(record, openings);
    }

    /** Turns to the time between a frame and the next. */
    void turnTo(int frame) {
        int next = (frame + 1) % record.frames();
        looked = -1;
        acrossX.turnTo(record.velocity(frame), record.velocity(next));
        acrossY.turnTo(record.velocity(frame), record.velocity(next));
        acrossZ.turnTo(record.velocity(frame), record.velocity(next));
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
        int i = (int) x;
        int j = (int) y;
        int k = (int) z;
        int cell = (k * grid.ny() + j) * grid.nx() + i;
        if (cell != looked) {
            int open = openings.of(cell);
            acrossX.look(cell, open);
            acrossY.look(cell, open);
            acrossZ.look(cell, open);
            looked = cell;
        }
        double early = (1 - share) * beforeUnit;
        double late = share * afterUnit;
        acrossX.take(early, late);
        acrossY.take(early, late);
        acrossZ.take(early, late);
        double a = x - i - 0.5;
        double b = y - j - 0.5;
        double c = z - k - 0.5;
        u = acrossX.velocity(a, b, c, (acrossY.changeOfOne + acrossZ.changeOfOne) / 2);
        v = acrossY.velocity(b, a, c, (acrossX.changeOfOne + acrossZ.changeOfOther) / 2);
        w = acrossZ.velocity(c, a, b, (acrossX.changeOfOther + acrossY.changeOfOther) / 2);
    }
}
