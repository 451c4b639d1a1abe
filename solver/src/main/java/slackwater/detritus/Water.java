package slackwater.detritus;

import slackwater.field.FlowRecord;
import slackwater.field.Grid;

/**
 * Reads a recorded flow between cells and between frames, in cells and seconds. From cells of water only, and only from
 * those that can be reached without passing rock; towards a wall the velocity across it falls to zero at its surface.
 * One for each thread.
 */
final class Water {
    /** Eddy viscosity over eddy diffusivity, 0.7: common for jets and wakes, from memory. */
    static final double SCHMIDT = 0.7;

    private final FlowRecord record;
    private final Grid grid;
    private final boolean[] fluid;
    private final float[] kick;
    private final int layer;
    private final double[] weight = new double[8];
    private final int[] corner = new int[8];
    private boolean openX;
    private boolean openY;
    private boolean openZ;
    private short[] before = new short[0];
    private short[] after = new short[0];
    private double beforeUnit;
    private double afterUnit;
    /** Velocity of the last {@link #read}, cells a second. */
    double u;
    double v;
    double w;

    Water(FlowRecord record) {
        this.record = record;
        this.grid = record.grid();
        this.fluid = record.fluid();
        this.layer = grid.nx() * grid.ny();
        this.kick = kicks(record);
    }

    /** sqrt(2 K) of every cell, cells per root of a second. */
    private static float[] kicks(FlowRecord record) {
        double h = record.grid().cellSizeM();
        float[] kicks = new float[record.grid().cells()];
        for (int cell = 0; cell < kicks.length; cell++) {
            kicks[cell] = (float) (Math.sqrt(2 * record.eddyViscosityM2PerS()[cell] / SCHMIDT) / h);
        }
        return kicks;
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
        double sum = locate(x, y, z);
        double a = (1 - share) * beforeUnit / sum;
        double b = share * afterUnit / sum;
        u = 0;
        v = 0;
        w = 0;
        for (int n = 0; n < 8; n++) {
            if (weight[n] > 0) {
                int from = 3 * corner[n];
                u += weight[n] * (a * before[from] + b * after[from]);
                v += weight[n] * (a * before[from + 1] + b * after[from + 1]);
                w += weight[n] * (a * before[from + 2] + b * after[from + 2]);
            }
        }
        u *= openX ? 1 : 1 - 2 * Math.abs(x - (int) x - 0.5);
        v *= openY ? 1 : 1 - 2 * Math.abs(y - (int) y - 0.5);
        w *= openZ ? 1 : 1 - 2 * Math.abs(z - (int) z - 0.5);
    }

    /** Size of the random step for the root of a second, from the place that was read last. */
    double kick() {
        double sum = 0;
        double weights = 0;
        for (int n = 0; n < 8; n++) {
            sum += weight[n] * kick[corner[n]];
            weights += weight[n];
        }
        return sum / weights;
    }

    /** The same at another place in water. */
    double kick(double x, double y, double z) {
        locate(x, y, z);
        return kick();
    }

    /** Finds the cells about a place and their trilinear weights; returns the weights' sum. */
    private double locate(double x, double y, double z) {
        int i = (int) x;
        int j = (int) y;
        int k = (int) z;
        int home = (k * grid.ny() + j) * grid.nx() + i;
        double offX = x - i - 0.5;
        double offY = y - j - 0.5;
        double offZ = z - k - 0.5;
        int stepX = offX < 0 ? -1 : 1;
        int stepY = offY < 0 ? -1 : 1;
        int stepZ = offZ < 0 ? -1 : 1;
        boolean insideX = i + stepX >= 0 && i + stepX < grid.nx();
        boolean insideY = j + stepY >= 0 && j + stepY < grid.ny();
        boolean insideZ = k + stepZ >= 0 && k + stepZ < grid.nz();
        double a = Math.abs(offX);
        double b = Math.abs(offY);
        double c = Math.abs(offZ);
        int besideX = home + stepX;
        int besideY = home + stepY * grid.nx();
        int besideZ = home + stepZ * layer;
        openX = insideX && fluid[besideX];
        openY = insideY && fluid[besideY];
        openZ = insideZ && fluid[besideZ];
        boolean xy = insideX && insideY && (openX || openY) && fluid[besideY + stepX];
        boolean xz = insideX && insideZ && (openX || openZ) && fluid[besideZ + stepX];
        boolean yz = insideY && insideZ && (openY || openZ) && fluid[besideZ + stepY * grid.nx()];
        boolean all = insideX && insideY && insideZ && (xy || xz || yz)
                && fluid[besideZ + stepY * grid.nx() + stepX];
        put(0, home, (1 - a) * (1 - b) * (1 - c), true);
        put(1, besideX, a * (1 - b) * (1 - c), openX);
        put(2, besideY, (1 - a) * b * (1 - c), openY);
        put(3, besideY + stepX, a * b * (1 - c), xy);
        put(4, besideZ, (1 - a) * (1 - b) * c, openZ);
        put(5, besideZ + stepX, a * (1 - b) * c, xz);
        put(6, besideZ + stepY * grid.nx(), (1 - a) * b * c, yz);
        put(7, besideZ + stepY * grid.nx() + stepX, a * b * c, all);
        double sum = 0;
        for (int n = 0; n < 8; n++) {
            sum += weight[n];
        }
        return sum;
    }

    private void put(int n, int cell, double share, boolean open) {
        weight[n] = open ? share : 0;
        corner[n] = open ? cell : corner[0];
    }
}
