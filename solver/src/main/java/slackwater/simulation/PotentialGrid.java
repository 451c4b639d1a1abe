package slackwater.simulation;

import java.util.Arrays;
import slackwater.backend.Spread;

/**
 * The equation for a potential whose differences across open faces carry away what is left in each cell, on cells of
 * one size, and under it the same on cells of twice the edge, and so on up to one cell. A guess that goes through all
 * of them (a V-cycle of multigrid) is good for long and for short ways at once; conjugate gradients need few rounds
 * with it [Tatebe1993]. Arrays go on for a plane before the first cell and after the last.
 */
final class PotentialGrid {
    /** Floats a cell in all arrays, those of larger cells included; more in tanks of few cells or a few cells wide. */
    static final int FLOATS_PER_CELL = 9;
    /** Share of the change that would put a cell right by itself: what smooths best in three dimensions. */
    private static final float DAMPING = 6f / 7;

    private final Spread threads;
    private final int nx;
    private final int ny;
    private final int nz;
    /** Distance to the neighbour along each axis. */
    private final int[] step;
    /** How well water passes the face of each cell towards smaller x, y and z; 0 through walls. */
    final float[][] open;
    private final float[] inverse;
    private final float[] product;
    private final float[] guess;
    /** What is left in each cell. */
    final float[] rest;
    private final PotentialGrid larger;

    /**
     * @param count of cells along x, y and z
     * @param passes how well water passes the face of each cell towards smaller x, y and z, x fastest
     * @param threads to work on
     */
    PotentialGrid(int[] count, float[][] passes, Spread threads) {
        this.threads = threads;
        nx = count[0];
        ny = count[1];
        nz = count[2];
        step = new int[] {1, nx, nx * ny};
        int length = nx * ny * (nz + 2);
        open = new float[3][length];
        inverse = new float[length];
        product = new float[length];
        guess = new float[length];
        rest = new float[length];
        for (int axis = 0; axis < 3; axis++) {
            System.arraycopy(passes[axis], 0, open[axis], step[2], passes[axis].length);
        }
        for (int n = step[2]; n < length - step[2]; n++) {
            float sum = 0;
            for (int axis = 0; axis < 3; axis++) {
                sum += open[axis][n] + open[axis][n + step[axis]];
            }
            inverse[n] = sum == 0 ? 0 : DAMPING / sum;
        }
        int[] half = {(nx + 1) / 2, (ny + 1) / 2, (nz + 1) / 2};
        larger = nx * ny * nz == 1 ? null : new PotentialGrid(half, passesOfLarger(half), threads);
    }

    /** Four faces side by side let four times as much water pass, over twice the way. */
    private float[][] passesOfLarger(int[] half) {
        float[][] passes = new float[3][half[0] * half[1] * half[2]];
        for (int k = 0; k < nz; k++) {
            for (int j = 0; j < ny; j++) {
                for (int i = 0; i < nx; i++) {
                    int cell = ((k + 1) * ny + j) * nx + i;
                    int block = (k / 2 * half[1] + j / 2) * half[0] + i / 2;
                    passes[0][block] += i % 2 == 0 ? open[0][cell] / 2 : 0;
                    passes[1][block] += j % 2 == 0 ? open[1][cell] / 2 : 0;
                    passes[2][block] += k % 2 == 0 ? open[2][cell] / 2 : 0;
                }
            }
        }
        return passes;
    }

    /** The potential, about, that carries {@link #rest} away. Not to be written. */
    float[] guess() {
        threads.over(nz, (from, to) -> {
            for (int n = start(from); n < start(to); n++) {
                guess[n] = inverse[n] * rest[n];
            }
        });
        if (larger == null) {
            return guess;
        }
        threads.over(larger.nz, this::handOn);
        float[] ofLarger = larger.guess();
        threads.over(nz, (from, to) -> add(ofLarger, from, to));
        threads.over(nz, (from, to) -> outflow(guess, product, start(from), start(to)));
        threads.over(nz, (from, to) -> {
            for (int n = start(from); n < start(to); n++) {
                guess[n] += inverse[n] * (rest[n] - product[n]);
            }
        });
        return guess;
    }

    private int start(int layer) {
        return (layer + 1) * step[2];
    }

    /** Hands on to layers of larger cells what the guess does not carry away. */
    private void handOn(int from, int to) {
        Arrays.fill(larger.rest, larger.start(from), larger.start(to), 0);
        for (int k = 2 * from; k < Math.min(2 * to, nz); k++) {
            outflow(guess, product, start(k), start(k + 1));
            for (int j = 0; j < ny; j++) {
                int row = start(k) + j * nx;
                int block = larger.start(k / 2) + j / 2 * larger.nx;
                for (int i = 0; i < nx; i++) {
                    larger.rest[block + i / 2] += rest[row + i] - product[row + i];
                }
            }
        }
    }

    private void add(float[] ofLarger, int from, int to) {
        for (int k = from; k < to; k++) {
            for (int j = 0; j < ny; j++) {
                int row = start(k) + j * nx;
                int block = larger.start(k / 2) + j / 2 * larger.nx;
                for (int i = 0; i < nx; i++) {
                    guess[row + i] += ofLarger[block + i / 2];
                }
            }
        }
    }

    /** What flows out of the cells [from, to) if the velocity through a face is the difference across it. */
    void outflow(float[] potential, float[] target, int from, int to) {
        float[] x = open[0];
        float[] y = open[1];
        float[] z = open[2];
        int row = step[1];
        int plane = step[2];
        for (int n = from; n < to; n++) {
            float here = potential[n];
            target[n] = x[n] * (here - potential[n - 1]) + x[n + 1] * (here - potential[n + 1])
                    + y[n] * (here - potential[n - row]) + y[n + row] * (here - potential[n + row])
                    + z[n] * (here - potential[n - plane]) + z[n + plane] * (here - potential[n + plane]);
        }
    }
}
