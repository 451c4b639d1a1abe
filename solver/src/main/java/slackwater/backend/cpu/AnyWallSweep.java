package slackwater.backend.cpu;

import slackwater.lattice.VelocitySet;

/**
 * The law of the wall at corners, edges, knobs and wherever cells do not lie in rows, one cell after the other. In
 * double precision, so that rounding of a slanted normal lets no mass through.
 */
final class AnyWallSweep implements WallSweep {
    private final FrictionTable friction;
    private final WallShape wall;

    AnyWallSweep(FrictionTable friction, WallShape wall) {
        this.friction = friction;
        this.wall = wall;
    }

    @Override
    public void slide(float[] f, int[] base, int at, int length, float[] stress, int from, float[] room) {
        for (int n = 0; n < length; n++) {
            stress[from + n] = (float) slide(f, base, at + n);
        }
    }

    /** The formulas of docs/numerics.md; returns rho u_tau^2. */
    private double slide(float[] f, int[] base, int at) {
        double density = 1 + f[base[0] + at];
        double jx = 0;
        double jy = 0;
        double jz = 0;
        for (int i = 1; i < VelocitySet.Q; i += 2) {
            double plus = f[base[i] + at];
            double minus = f[base[i + 1] + at];
            double odd = plus - minus;
            density += plus + minus;
            jx += odd * VelocitySet.cx(i);
            jy += odd * VelocitySet.cy(i);
            jz += odd * VelocitySet.cz(i);
        }
        double ex = 0;
        double ey = 0;
        double ez = 0;
        for (int i : wall.links()) {
            double twice = 2 * f[base[i] + at];
            ex += twice * VelocitySet.cx(i);
            ey += twice * VelocitySet.cy(i);
            ez += twice * VelocitySet.cz(i);
        }
        double[] n = wall.normal();
        double outward = (jx - ex) * n[0] + (jy - ey) * n[1] + (jz - ez) * n[2];
        double freeX = jx - ex - outward * n[0];
        double freeY = jy - ey - outward * n[1];
        double freeZ = jz - ez - outward * n[2];
        double along = Math.sqrt(freeX * freeX + freeY * freeY + freeZ * freeZ);
        double rate = friction.rate(along / density, wall.roughDrag());
        double taken = rate * wall.area();
        push(f, base, at, -taken * freeX - ex, -taken * freeY - ey, -taken * freeZ - ez);
        return rate * along;
    }

    /** Gives a cell this momentum, as far as it lies along the wall, by a slip velocity s: f_i += 6 w_i c_i.s. */
    private void push(float[] f, int[] base, int at, double px, double py, double pz) {
        double[] k = wall.inverse();
        double sx = k[0] * px + k[3] * py + k[4] * pz;
        double sy = k[3] * px + k[1] * py + k[5] * pz;
        double sz = k[4] * px + k[5] * py + k[2] * pz;
        for (int i : wall.links()) {
            double cs = sx * VelocitySet.cx(i) + sy * VelocitySet.cy(i) + sz * VelocitySet.cz(i);
            f[base[i] + at] += (float) (6 * VelocitySet.weight(i) * cs);
        }
    }
}
