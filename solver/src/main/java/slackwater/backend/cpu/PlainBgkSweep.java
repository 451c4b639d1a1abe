package slackwater.backend.cpu;

import java.util.Arrays;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.VelocitySet;

/**
 * The collision of {@link BgkSweep} by plain loops over rows of cells, for Java machines without the vector module: the
 * same results within rounding. One object for each thread.
 */
final class PlainBgkSweep implements Sweep {
    /** So many cells that their rows stay in the nearest cache. */
    private static final int PORTION = 128;
    /** Components of the symmetric tensors: xx, yy, zz, xy, xz, yz. */
    private static final int SIX = 6;
    /** c c of every direction, component by component. */
    private static final float[][] PRODUCTS = new float[VelocitySet.Q][SIX];

    private final float tau;
    private final float[] eddy;
    private final float[] common = new float[PORTION];
    private final float[] jx = new float[PORTION];
    private final float[] jy = new float[PORTION];
    private final float[] jz = new float[PORTION];
    /** Second moments, then rho u u. */
    private final float[][] second = new float[SIX][PORTION];
    private final float[] even = new float[PORTION];
    private final float[] odd = new float[PORTION];
    private final float[] omega = new float[PORTION];

    static {
        for (int i = 0; i < VelocitySet.Q; i++) {
            int x = VelocitySet.cx(i);
            int y = VelocitySet.cy(i);
            int z = VelocitySet.cz(i);
            PRODUCTS[i] = new float[] {x * x, y * y, z * z, x * y, x * z, y * z};
        }
    }

    /** @param eddy 18 sqrt(2) l^2 of every cell, for its mixing length l, in the array's layout */
    PlainBgkSweep(Bgk operator, float[] eddy) {
        tau = (float) operator.relaxationTime();
        this.eddy = eddy;
    }

    @Override
    public void collide(float[] f, int[] b, int from, int to) {
        for (int x = from; x < to; x += PORTION) {
            int cells = Math.min(PORTION, to - x);
            moments(f, b, x, cells);
            rates(x, cells);
            relaxRest(f, b[0] + x, cells);
            for (int i = 1; i < VelocitySet.Q; i += 2) {
                equilibrium(i, cells);
                relaxPair(f, b[i] + x, b[i + 1] + x, cells);
            }
        }
    }

    /** Density (in {@code common}), momentum and second moments of some cells. */
    private void moments(float[] f, int[] b, int at, int cells) {
        System.arraycopy(f, b[0] + at, common, 0, cells);
        Arrays.fill(jx, 0);
        Arrays.fill(jy, 0);
        Arrays.fill(jz, 0);
        for (float[] component : second) {
            Arrays.fill(component, 0);
        }
        for (int i = 1; i < VelocitySet.Q; i += 2) {
            int plus = b[i] + at;
            int minus = b[i + 1] + at;
            for (int n = 0; n < cells; n++) {
                even[n] = f[plus + n] + f[minus + n];
                odd[n] = f[plus + n] - f[minus + n];
            }
            add(common, 1, even);
            add(jx, VelocitySet.cx(i), odd);
            add(jy, VelocitySet.cy(i), odd);
            add(jz, VelocitySet.cz(i), odd);
            for (int component = 0; component < SIX; component++) {
                add(second[component], PRODUCTS[i][component], even);
            }
        }
    }

    private static void add(float[] sum, float factor, float[] values) {
        for (int n = 0; n < PORTION && factor != 0; n++) {
            sum[n] += factor * values[n];
        }
    }

    /** The relaxation rate of each cell; leaves rho - 1.5 tr(rho u u) in {@code common}. */
    private void rates(int at, int cells) {
        for (int n = 0; n < cells; n++) {
            float inverse = 1 / (common[n] + 1);
            float third = common[n] * (1f / 3);
            float exx = jx[n] * jx[n] * inverse;
            float eyy = jy[n] * jy[n] * inverse;
            float ezz = jz[n] * jz[n] * inverse;
            float exy = jx[n] * jy[n] * inverse;
            float exz = jx[n] * jz[n] * inverse;
            float eyz = jy[n] * jz[n] * inverse;
            float sxx = second[0][n] - third - exx;
            float syy = second[1][n] - third - eyy;
            float szz = second[2][n] - third - ezz;
            float sxy = second[3][n] - exy;
            float sxz = second[4][n] - exz;
            float syz = second[5][n] - eyz;
            float contraction = sxx * sxx + syy * syy + szz * szz + 2 * (sxy * sxy + sxz * sxz + syz * syz);
            float square = (float) Math.sqrt(contraction) * inverse * eddy[at + n] + tau * tau;
            omega[n] = 2 / ((float) Math.sqrt(square) + tau);
            common[n] -= 1.5f * (exx + eyy + ezz);
            second[0][n] = exx;
            second[1][n] = eyy;
            second[2][n] = ezz;
            second[3][n] = 2 * exy;
            second[4][n] = 2 * exz;
            second[5][n] = 2 * eyz;
        }
    }

    private void relaxRest(float[] f, int at, int cells) {
        for (int n = 0; n < cells; n++) {
            f[at + n] += omega[n] * (common[n] * (8f / 27) - f[at + n]);
        }
    }

    /** Even and odd part of the equilibrium of direction i and its opposite. */
    private void equilibrium(int i, int cells) {
        float weight = (float) VelocitySet.weight(i);
        Arrays.fill(odd, 0);
        add(odd, 3 * weight * VelocitySet.cx(i), jx);
        add(odd, 3 * weight * VelocitySet.cy(i), jy);
        add(odd, 3 * weight * VelocitySet.cz(i), jz);
        for (int n = 0; n < cells; n++) {
            even[n] = weight * common[n];
        }
        for (int component = 0; component < SIX; component++) {
            add(even, 4.5f * weight * PRODUCTS[i][component], second[component]);
        }
    }

    /** Each goes where the other was read. */
    private void relaxPair(float[] f, int plus, int minus, int cells) {
        for (int n = 0; n < cells; n++) {
            float p = f[plus + n];
            float m = f[minus + n];
            f[minus + n] = p + omega[n] * (even[n] + odd[n] - p);
            f[plus + n] = m + omega[n] * (even[n] - odd[n] - m);
        }
    }
}
