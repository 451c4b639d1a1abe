package slackwater.simulation;

import java.util.Arrays;
import slackwater.field.Grid;

/**
 * Velocities through the faces of cells that neither make nor lose water. The mean of the two cells beside a face is
 * taken first; between cells of some width those means do not quite balance, and what floats would gather where water
 * seems to vanish. The nearest velocities that balance differ from them by a gradient (Helmholtz), which is sought by
 * conjugate gradients from that of the last time on [Hestenes1952].
 */
final class Continuity {
    static final long BYTES_PER_CELL = 9 * Float.BYTES;
    /** What may be left of the imbalance, r.m.s.: 1 % of what the means have. */
    private static final double ENOUGH = 0.01;
    private static final int MOST_ROUNDS = 500;

    /** Distance to the neighbour along each axis, in arrays that go on for a plane before the first cell and after. */
    private final int[] step;
    private final int first;
    private final int end;
    /** 1 for a face that water passes, towards smaller x, y or z; else 0. */
    private final float[][] open;
    private final float[] source;
    private final float[] gradient;
    private final float[] rest;
    private final float[] way;
    private final float[] through;
    private final float[] product;

    /** @param sourcePerS share of each cell's water that arrives in a second, below 0 for what leaves */
    Continuity(Grid grid, boolean[] solid, float[] sourcePerS) {
        step = new int[] {1, grid.nx(), grid.nx() * grid.ny()};
        first = step[2];
        end = first + solid.length;
        int length = end + step[2];
        open = new float[3][length];
        source = new float[length];
        gradient = new float[length];
        rest = new float[length];
        way = new float[length];
        through = new float[length];
        product = new float[length];
        for (int cell = 0; cell < solid.length; cell++) {
            source[first + cell] = (float) (sourcePerS[cell] * grid.cellSizeM());
            int[] at = {cell % grid.nx(), cell / grid.nx() % grid.ny(), cell / step[2]};
            for (int axis = 0; axis < 3 && !solid[cell]; axis++) {
                open[axis][first + cell] = at[axis] > 0 && !solid[cell - step[axis]] ? 1 : 0;
            }
        }
    }

    /**
     * Fills in the velocity through the face of every cell towards smaller x, y and z; 0 through walls.
     *
     * @param cells velocity of every cell along x, y and z, metres a second
     * @param faces where to put the result, the same way
     */
    void balance(float[][] cells, float[][] faces) {
        System.arraycopy(source, 0, rest, 0, rest.length);
        for (int axis = 0; axis < 3; axis++) {
            System.arraycopy(cells[axis], 0, way, first, end - first);
            pass(way, axis, 0.5f, 1);
            System.arraycopy(through, first, faces[axis], 0, end - first);
            for (int n = first; n < end; n++) {
                rest[n] += through[n] - through[n + step[axis]];
            }
        }
        solve();
        for (int axis = 0; axis < 3; axis++) {
            pass(gradient, axis, 1, -1);
            for (int n = first; n < end; n++) {
                faces[axis][n - first] -= through[n];
            }
        }
    }

    /** What passes each face towards smaller x, y or z: a share of a value here and so much of it, signed, beyond. */
    private void pass(float[] values, int axis, float here, int beyond) {
        float[] opened = open[axis];
        int back = step[axis];
        float there = here * beyond;
        for (int n = first; n < end; n++) {
            through[n] = opened[n] * (here * values[n] + there * values[n - back]);
        }
    }

    /** Conjugate gradients for the potential whose differences carry away what does not balance. */
    private void solve() {
        double enough = ENOUGH * ENOUGH * dot(rest, rest);
        differences(gradient);
        for (int n = first; n < end; n++) {
            rest[n] -= product[n];
            way[n] = rest[n];
        }
        double squares = dot(rest, rest);
        for (int round = 0; round < MOST_ROUNDS && squares > enough; round++) {
            differences(way);
            float far = (float) (squares / dot(way, product));
            for (int n = first; n < end; n++) {
                gradient[n] += far * way[n];
                rest[n] -= far * product[n];
            }
            double before = squares;
            squares = dot(rest, rest);
            float more = (float) (squares / before);
            for (int n = first; n < end; n++) {
                way[n] = rest[n] + more * way[n];
            }
        }
    }

    /** Four sums side by side, since one waits for itself. */
    private double dot(float[] a, float[] b) {
        double one = 0;
        double two = 0;
        double three = 0;
        double four = 0;
        int n = first;
        for (; n + 3 < end; n += 4) {
            one += (double) a[n] * b[n];
            two += (double) a[n + 1] * b[n + 1];
            three += (double) a[n + 2] * b[n + 2];
            four += (double) a[n + 3] * b[n + 3];
        }
        for (; n < end; n++) {
            one += (double) a[n] * b[n];
        }
        return one + two + three + four;
    }

    /** What flows out of each cell if the velocity through a face is the difference across it. */
    private void differences(float[] potential) {
        Arrays.fill(product, 0);
        for (int axis = 0; axis < 3; axis++) {
            pass(potential, axis, 1, -1);
            int ahead = step[axis];
            for (int n = first; n < end; n++) {
                product[n] += through[n] - through[n + ahead];
            }
        }
    }
}
