package slackwater.detritus;

import java.util.Arrays;
import slackwater.field.FlowRecord;
import slackwater.field.Grid;

/**
 * How far the eddies below a cell throw a grain: sqrt(2 K), trilinear between the centres of cells, from cells of water
 * only, and only from those that can be reached without passing rock. One for each thread.
 */
final class Eddies {
    /** Eddy viscosity over eddy diffusivity, 0.7: common for jets and wakes, from memory. */
    static final double SCHMIDT = 0.7;

    private static final float NO_WATER = -1;

    /** sqrt(2 K), cells per root of a second, on the grid with one more cell at every side. */
    private final float[] kick;
    private final int row;
    private final int layer;
    private double sum;
    private double weights;

    Eddies(FlowRecord record) {
        this(kicks(record), record.grid().nx() + 2, (record.grid().nx() + 2) * (record.grid().ny() + 2));
    }

    private Eddies(float[] kick, int row, int layer) {
        this.kick = kick;
        this.row = row;
        this.layer = layer;
    }

    /** The same for another thread. */
    Eddies again() {
        return new Eddies(kick, row, layer);
    }

    private static float[] kicks(FlowRecord record) {
        Grid grid = record.grid();
        float[] kicks = new float[(grid.nx() + 2) * (grid.ny() + 2) * (grid.nz() + 2)];
        Arrays.fill(kicks, NO_WATER);
        for (int cell = 0; cell < grid.cells(); cell++) {
            if (record.fluid()[cell]) {
                kicks[Openings.padded(grid, cell)] = (float) (Math.sqrt(2 * record.eddyViscosityM2PerS()[cell]
                        / SCHMIDT) / grid.cellSizeM());
            }
        }
        return kicks;
    }

    /** Size of the random step for the root of a second at a place in water, cells. */
    double kick(double x, double y, double z) {
        int i = (int) x;
        int j = (int) y;
        int k = (int) z;
        int home = (k + 1) * layer + (j + 1) * row + i + 1;
        double offX = x - i - 0.5;
        double offY = y - j - 0.5;
        double offZ = z - k - 0.5;
        double a = Math.abs(offX);
        double b = Math.abs(offY);
        double c = Math.abs(offZ);
        int besideX = home + (offX < 0 ? -1 : 1);
        int besideY = home + (offY < 0 ? -row : row);
        int besideZ = home + (offZ < 0 ? -layer : layer);
        int besideXy = besideX + besideY - home;
        int besideXz = besideX + besideZ - home;
        int besideYz = besideY + besideZ - home;
        int besideAll = besideXy + besideZ - home;
        boolean openX = kick[besideX] >= 0;
        boolean openY = kick[besideY] >= 0;
        boolean openZ = kick[besideZ] >= 0;
        boolean xy = (openX || openY) && kick[besideXy] >= 0;
        boolean xz = (openX || openZ) && kick[besideXz] >= 0;
        boolean yz = (openY || openZ) && kick[besideYz] >= 0;
        boolean all = (xy || xz || yz) && kick[besideAll] >= 0;
        sum = 0;
        weights = 0;
        add(home, (1 - a) * (1 - b) * (1 - c), true);
        add(besideX, a * (1 - b) * (1 - c), openX);
        add(besideY, (1 - a) * b * (1 - c), openY);
        add(besideXy, a * b * (1 - c), xy);
        add(besideZ, (1 - a) * (1 - b) * c, openZ);
        add(besideXz, a * (1 - b) * c, xz);
        add(besideYz, (1 - a) * b * c, yz);
        add(besideAll, a * b * c, all);
        return sum / weights;
    }

    private void add(int cell, double weight, boolean open) {
        if (open) {
            sum += weight * kick[cell];
            weights += weight;
        }
    }
}
