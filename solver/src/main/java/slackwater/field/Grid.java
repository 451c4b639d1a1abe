package slackwater.field;

import slackwater.geometry.Vec3;

/**
 * A regular grid of cubic cells over the tank. Cell (i, j, k) has its centre at (i + 1/2, j + 1/2, k + 1/2) h;
 * its values stand at {@code index(i, j, k)}, x fastest.
 *
 * @param nx cells along the front
 * @param ny cells from front to back
 * @param nz cells upwards
 * @param cellSizeM edge h of a cell, metres
 */
public record Grid(int nx, int ny, int nz, double cellSizeM) {
    public int cells() {
        return nx * ny * nz;
    }

    public int index(int i, int j, int k) {
        return (k * ny + j) * nx + i;
    }

    /** Index of the cell that holds a place, metres; of the nearest where it lies outside. */
    public int indexAt(Vec3 placeM) {
        return index(clamp(placeM.x(), nx), clamp(placeM.y(), ny), clamp(placeM.z(), nz));
    }

    private int clamp(double lengthM, int count) {
        return Math.max(0, Math.min(count - 1, (int) Math.floor(lengthM / cellSizeM)));
    }

    /** Centre of a cell, metres. */
    public Vec3 centreM(int i, int j, int k) {
        return new Vec3((i + 0.5) * cellSizeM, (j + 0.5) * cellSizeM, (k + 0.5) * cellSizeM);
    }

    /** Centre of the cell whose values stand at an index, metres. */
    public Vec3 centreM(int index) {
        return centreM(index % nx, index / nx % ny, index / (nx * ny));
    }

    public double cellVolumeM3() {
        return cellSizeM * cellSizeM * cellSizeM;
    }
}
