package slackwater.detritus;

import slackwater.field.FlowRecord;
import slackwater.field.Grid;

/**
 * How far the eddies below a cell throw a grain: sqrt(2 K), trilinear between the centres of cells, from cells of water
 * only, and only from those that can be reached without passing rock. One for each thread.
 */
final class Eddies {
    /** Eddy viscosity over eddy diffusivity, 0.7: common for jets and wakes, from memory. */
    static final double SCHMIDT = 0.7;

    private final Grid grid;
    private final boolean[] fluid;
    private final float[] kick;
    private final int layer;
    private double sum;
    private double weights;

    Eddies(FlowRecord record) {
        this(record.grid(), record.fluid(), kicks(record));
    }

    private Eddies(Grid grid, boolean[] fluid, float[] kick) {
        this.grid = grid;
        this.fluid = fluid;
        this.layer = grid.nx() * grid.ny();
        this.kick = kick;
    }

    /** The same for another thread. */
    Eddies again() {
        return new Eddies(grid, fluid, kick);
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

    /** Size of the random step for the root of a second at a place in water, cells. */
    double kick(double x, double y, double z) {
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
        boolean openX = insideX && fluid[besideX];
        boolean openY = insideY && fluid[besideY];
        boolean openZ = insideZ && fluid[besideZ];
        boolean xy = insideX && insideY && (openX || openY) && fluid[besideY + stepX];
        boolean xz = insideX && insideZ && (openX || openZ) && fluid[besideZ + stepX];
        boolean yz = insideY && insideZ && (openY || openZ) && fluid[besideZ + stepY * grid.nx()];
        boolean all = insideX && insideY && insideZ && (xy || xz || yz)
                && fluid[besideZ + stepY * grid.nx() + stepX];
        sum = 0;
        weights = 0;
        add(home, (1 - a) * (1 - b) * (1 - c), true);
        add(besideX, a * (1 - b) * (1 - c), openX);
        add(besideY, (1 - a) * b * (1 - c), openY);
        add(besideY + stepX, a * b * (1 - c), xy);
        add(besideZ, (1 - a) * (1 - b) * c, openZ);
        add(besideZ + stepX, a * (1 - b) * c, xz);
        add(besideZ + stepY * grid.nx(), (1 - a) * b * c, yz);
        add(besideZ + stepY * grid.nx() + stepX, a * b * c, all);
        return sum / weights;
    }

    private void add(int cell, double weight, boolean open) {
        if (open) {
            sum += weight * kick[cell];
            weights += weight;
        }
    }
}
