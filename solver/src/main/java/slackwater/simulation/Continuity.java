package slackwater.simulation;

import slackwater.backend.Spread;
import slackwater.field.Grid;

/**
 * Velocities through the faces of cells that neither make nor lose water. The mean of the two cells beside a face is
 * taken first; between cells of some width those means do not quite balance, and what floats would gather where water
 * seems to vanish. The nearest velocities that balance differ from them by a gradient (Helmholtz), which is sought by
 * conjugate gradients from that of the last time on [Hestenes1952], with a guess on cells of every size in each round.
 */
final class Continuity {
    static final long BYTES_PER_CELL = (4 + PotentialGrid.FLOATS_PER_CELL) * Float.BYTES;
    /** What may be left of the imbalance, r.m.s.: 1 % of what the means have. */
    private static final double ENOUGH = 0.01;
    private static final int MOST_ROUNDS = 100;
    /** So many products are added up in single precision. */
    private static final int STRETCH = 128;

    private final Spread threads;
    /** Distance to the neighbour along each axis, in arrays that go on for a plane before the first cell and after. */
    private final int[] step;
    private final int layers;
    private final PotentialGrid equation;
    /** 1 for a face that water passes, towards smaller x, y or z; else 0. */
    private final float[][] open;
    private final float[] source;
    private final float[] potential;
    private final float[] rest;
    private final float[] way;
    private final float[] product;
    /** Sums of each layer, so that they do not depend on the threads. */
    private final double[] sums;

    /** What is done to the cells [from, to) of one layer; its sum counts. */
    private interface Layer {
        double run(int from, int to);
    }

    /**
     * @param sourcePerS share of each cell's water that arrives in a second, below 0 for what leaves
     * @param threads to work on
     */
    Continuity(Grid grid, boolean[] solid, float[] sourcePerS, Spread threads) {
        this.threads = threads;
        step = new int[] {1, grid.nx(), grid.nx() * grid.ny()};
        layers = grid.nz();
        int first = step[2];
        int length = first + solid.length + step[2];
        source = new float[length];
        potential = new float[length];
        way = new float[length];
        product = new float[length];
        sums = new double[layers];
        float[][] passes = new float[3][solid.length];
        for (int cell = 0; cell < solid.length; cell++) {
            source[first + cell] = (float) (sourcePerS[cell] * grid.cellSizeM());
            int[] at = {cell % grid.nx(), cell / grid.nx() % grid.ny(), cell / step[2]};
            for (int axis = 0; axis < 3 && !solid[cell]; axis++) {
                passes[axis][cell] = at[axis] > 0 && !solid[cell - step[axis]] ? 1 : 0;
            }
        }
        equation = new PotentialGrid(new int[] {grid.nx(), grid.ny(), grid.nz()}, passes, threads);
        open = equation.open;
        rest = equation.rest;
    }

    /**
     * Fills in the velocity through the face of every cell towards smaller x, y and z; 0 through walls.
     *
     * @param cells velocity of every cell along x, y and z, metres a second
     * @param faces where to put the result, the same way
     */
    void balance(float[][] cells, float[][] faces) {
        for (int axis = 0; axis < 3; axis++) {
            int along = axis;
            layers((from, to) -> means(cells[along], along, faces[along], from, to));
        }
        layers((from, to) -> imbalance(faces, from, to));
        solve();
        layers((from, to) -> correct(faces, from, to));
    }

    /** Mean velocity of the two cells beside each face; 0 through walls. */
    private double means(float[] cells, int axis, float[] faces, int from, int to) {
        float[] opened = open[axis];
        int back = step[axis];
        int start = Math.max(from, step[2] + back);
        for (int n = from; n < start; n++) {
            faces[n - step[2]] = 0;
        }
        for (int n = start; n < to; n++) {
            faces[n - step[2]] = opened[n] * 0.5f * (cells[n - step[2]] + cells[n - step[2] - back]);
        }
        return 0;
    }

    /** What arrives in each cell and does not leave it. */
    private double imbalance(float[][] faces, int from, int to) {
        System.arraycopy(source, from, rest, from, to - from);
        for (int axis = 0; axis < 3; axis++) {
            float[] through = faces[axis];
            float[] opened = open[axis];
            int ahead = step[axis];
            for (int n = from; n < to; n++) {
                int cell = n - step[2];
                rest[n] += through[cell] - (opened[n + ahead] == 0 ? 0 : through[cell + ahead]);
            }
        }
        return 0;
    }

    private double correct(float[][] faces, int from, int to) {
        for (int axis = 0; axis < 3; axis++) {
            float[] opened = open[axis];
            float[] through = faces[axis];
            int back = step[axis];
            for (int n = from; n < to; n++) {
                through[n - step[2]] -= opened[n] * (potential[n] - potential[n - back]);
            }
        }
        return 0;
    }

    /** Conjugate gradients for the potential whose differences carry away what does not balance. */
    private void solve() {
        double enough = ENOUGH * ENOUGH * layers((from, to) -> dot(rest, rest, from, to));
        double squares = layers(this::begin);
        double before = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS && squares > enough; round++) {
            float[] guess = equation.guess();
            double now = layers((from, to) -> dot(rest, guess, from, to));
            float more = (float) (now / before);
            before = now;
            layers((from, to) -> turn(guess, more, from, to));
            double bend = layers(this::bend);
            if (!(bend > 0)) {
                return;
            }
            float far = (float) (now / bend);
            squares = layers((from, to) -> goOn(far, from, to));
        }
    }

    private double begin(int from, int to) {
        equation.outflow(potential, product, from, to);
        for (int n = from; n < to; n++) {
            rest[n] -= product[n];
        }
        return dot(rest, rest, from, to);
    }

    private double turn(float[] guess, float more, int from, int to) {
        for (int n = from; n < to; n++) {
            way[n] = guess[n] + more * way[n];
        }
        return 0;
    }

    private double bend(int from, int to) {
        equation.outflow(way, product, from, to);
        return dot(way, product, from, to);
    }

    private double goOn(float far, int from, int to) {
        for (int n = from; n < to; n++) {
            potential[n] += far * way[n];
            rest[n] -= far * product[n];
        }
        return dot(rest, rest, from, to);
    }

    /** Does something to every layer and adds up what comes of it, from the bottom. */
    private double layers(Layer work) {
        threads.over(layers, (from, to) -> {
            for (int k = from; k < to; k++) {
                sums[k] = work.run((k + 1) * step[2], (k + 2) * step[2]);
            }
        });
        double sum = 0;
        for (double one : sums) {
            sum += one;
        }
        return sum;
    }

    /**
     * Four sums side by side, since one waits for itself; in double precision only from stretch to stretch, since to
     * turn every number into a double takes longer than all the rest.
     */
    private static double dot(float[] a, float[] b, int from, int to) {
        double sum = 0;
        for (int start = from; start < to; start += STRETCH) {
            int end = Math.min(to, start + STRETCH);
            float one = 0;
            float two = 0;
            float three = 0;
            float four = 0;
            int n = start;
            for (; n + 3 < end; n += 4) {
                one += a[n] * b[n];
                two += a[n + 1] * b[n + 1];
                three += a[n + 2] * b[n + 2];
                four += a[n + 3] * b[n + 3];
            }
            for (; n < end; n++) {
                one += a[n] * b[n];
            }
            sum += one + two + three + four;
        }
        return sum;
    }
}
