package slackwater.backend.cpu;

import java.util.Arrays;
import slackwater.lattice.VelocitySet;

/**
 * The law of the wall at corners, edges, knobs and wherever cells do not lie in rows, one cell after the other. In
 * double precision, so that rounding of a slanted normal lets no mass through.
 */
final class AnyWallSweep implements WallSweep {
    private static final int PAIRS = VelocitySet.Q / 2;

    private final FrictionTable friction;
    private final double roughDrag;
    private final double area;
    private final int[] links;
    /**
     * Momentum along a frictionless wall is the sum over opposite pairs, 2p + 1 and 2p + 2, of these times the
     * difference of the two populations; times their sum where one of them is a link, in L turned round.
     */
    private final double[] freeX = new double[PAIRS];
    private final double[] freeY = new double[PAIRS];
    private final double[] freeZ = new double[PAIRS];
    private final double[] sign = new double[PAIRS];
    /** 2 c_i of each link, for the momentum E of bounce-back. */
    private final double[] twiceX;
    private final double[] twiceY;
    private final double[] twiceZ;
    /** 6 w_i K c_i of each link: what it gains from momentum along the wall. */
    private final double[] gainX;
    private final double[] gainY;
    private final double[] gainZ;

    AnyWallSweep(FrictionTable friction, WallShape wall) {
        this.friction = friction;
        roughDrag = wall.roughDrag();
        area = wall.area();
        links = wall.links();
        twiceX = new double[links.length];
        twiceY = new double[links.length];
        twiceZ = new double[links.length];
        gainX = new double[links.length];
        gainY = new double[links.length];
        gainZ = new double[links.length];
        double[] n = wall.normal();
        for (int pair = 0; pair < PAIRS; pair++) {
            int i = 2 * pair + 1;
            double outward = VelocitySet.cx(i) * n[0] + VelocitySet.cy(i) * n[1] + VelocitySet.cz(i) * n[2];
            double turned = isLink(i) ? -1 : 1;
            freeX[pair] = turned * (VelocitySet.cx(i) - outward * n[0]);
            freeY[pair] = turned * (VelocitySet.cy(i) - outward * n[1]);
            freeZ[pair] = turned * (VelocitySet.cz(i) - outward * n[2]);
            sign[pair] = isLink(i) == isLink(i + 1) ? -1 : 1;
        }
        for (int m = 0; m < links.length; m++) {
            addLink(m, links[m], wall.inverse());
        }
    }

    private boolean isLink(int direction) {
        return Arrays.binarySearch(links, direction) >= 0;
    }

    private void addLink(int m, int i, double[] k) {
        int x = VelocitySet.cx(i);
        int y = VelocitySet.cy(i);
        int z = VelocitySet.cz(i);
        twiceX[m] = 2 * x;
        twiceY[m] = 2 * y;
        twiceZ[m] = 2 * z;
        double weight = 6 * VelocitySet.weight(i);
        gainX[m] = weight * (k[0] * x + k[3] * y + k[4] * z);
        gainY[m] = weight * (k[3] * x + k[1] * y + k[5] * z);
        gainZ[m] = weight * (k[4] * x + k[5] * y + k[2] * z);
    }

    @Override
    public void slide(float[] f, int[] base, int at, int length, float[] stress, int from, float[] room) {
        for (int n = 0; n < length; n++) {
            stress[from + n] = (float) slide(f, base, at + n);
        }
    }

    /** The formulas of docs/numerics.md; returns rho u_tau^2. */
    private double slide(float[] f, int[] base, int at) {
        double density = 1.0 + f[base[0] + at];
        double jx = 0;
        double jy = 0;
        double jz = 0;
        for (int pair = 0; pair < PAIRS; pair++) {
            double plus = f[base[2 * pair + 1] + at];
            double minus = f[base[2 * pair + 2] + at];
            density += plus + minus;
            double value = plus + sign[pair] * minus;
            jx += freeX[pair] * value;
            jy += freeY[pair] * value;
            jz += freeZ[pair] * value;
        }
        double along = Math.sqrt(jx * jx + jy * jy + jz * jz);
        double rate = friction.rate(along / density, roughDrag);
        double px = -rate * area * jx;
        double py = -rate * area * jy;
        double pz = -rate * area * jz;
        for (int m = 0; m < links.length; m++) {
            double value = f[base[links[m]] + at];
            px -= twiceX[m] * value;
            py -= twiceY[m] * value;
            pz -= twiceZ[m] * value;
        }
        for (int m = 0; m < links.length; m++) {
            f[base[links[m]] + at] += (float) (gainX[m] * px + gainY[m] * py + gainZ[m] * pz);
        }
        return rate * along;
    }
}
