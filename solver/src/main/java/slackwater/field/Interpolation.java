package slackwater.field;

import java.util.OptionalDouble;
import slackwater.geometry.Vec3;

/**
 * Reads a field between the centres of its cells: trilinear, from cells of water only, so that rock, which holds 0,
 * slows nothing down. Outside the outermost centres the nearest ones count.
 *
 * @param grid the cells
 * @param fluid true where there is water
 * @param values one value a cell
 */
public record Interpolation(Grid grid, boolean[] fluid, float[] values) {
    /** The value at a place, metres; empty where none of the eight cells about it is water. */
    public OptionalDouble at(Vec3 placeM) {
        double[] at = {placeM.x() / grid.cellSizeM() - 0.5, placeM.y() / grid.cellSizeM() - 0.5,
            placeM.z() / grid.cellSizeM() - 0.5};
        int[] count = {grid.nx(), grid.ny(), grid.nz()};
        int[] cell = new int[3];
        double sum = 0;
        double weights = 0;
        for (int corner = 0; corner < 8; corner++) {
            double weight = 1;
            for (int axis = 0; axis < 3; axis++) {
                int low = (int) Math.floor(at[axis]);
                int step = corner >> axis & 1;
                cell[axis] = Math.max(0, Math.min(count[axis] - 1, low + step));
                weight *= step == 1 ? at[axis] - low : 1 - at[axis] + low;
            }
            int index = grid.index(cell[0], cell[1], cell[2]);
            if (fluid[index]) {
                sum += weight * values[index];
                weights += weight;
            }
        }
        return weights > 0 ? OptionalDouble.of(sum / weights) : OptionalDouble.empty();
    }
}
