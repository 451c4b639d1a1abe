package slackwater.viewer.shape;

import slackwater.field.Grid;

/** What a field that lives in the cells along walls, such as wall shear, says at the vertices of a surface. */
public final class WallValues {
    private WallValues() {
    }

    /**
     * One value a vertex: the mean of the cells within about one and a half cells of the point half a cell off the
     * surface, weighted by nearness; 0 where there is none.
     *
     * @param carrying which cells have a value that counts
     */
    public static float[] on(Surface surface, Grid grid, boolean[] carrying, float[] values) {
        float[] at = new float[surface.vertexCount()];
        double h = grid.cellSizeM();
        for (int n = 0; n < at.length; n++) {
            at[n] = at(grid, carrying, values, new double[] {
                (surface.points()[3 * n] + surface.normals()[3 * n] * h / 2) / h - 0.5,
                (surface.points()[3 * n + 1] + surface.normals()[3 * n + 1] * h / 2) / h - 0.5,
                (surface.points()[3 * n + 2] + surface.normals()[3 * n + 2] * h / 2) / h - 0.5});
        }
        return at;
    }

    private static float at(Grid grid, boolean[] carrying, float[] values, double[] cells) {
        double sum = 0;
        double weights = 0;
        int i0 = (int) Math.round(cells[0]);
        int j0 = (int) Math.round(cells[1]);
        int k0 = (int) Math.round(cells[2]);
        for (int k = Math.max(0, k0 - 1); k <= Math.min(grid.nz() - 1, k0 + 1); k++) {
            for (int j = Math.max(0, j0 - 1); j <= Math.min(grid.ny() - 1, j0 + 1); j++) {
                for (int i = Math.max(0, i0 - 1); i <= Math.min(grid.nx() - 1, i0 + 1); i++) {
                    int cell = grid.index(i, j, k);
                    if (carrying[cell]) {
                        double dx = i - cells[0];
                        double dy = j - cells[1];
                        double dz = k - cells[2];
                        double weight = 1 / (0.1 + dx * dx + dy * dy + dz * dz);
                        sum += weight * values[cell];
                        weights += weight;
                    }
                }
            }
        }
        return weights > 0 ? (float) (sum / weights) : 0;
    }
}
