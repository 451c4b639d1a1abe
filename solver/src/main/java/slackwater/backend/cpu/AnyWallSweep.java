package slackwater.backend.cpu;

import slackwater.lattice.VelocitySet;

/** Bounce-back and the law of the wall on cells of one kind, one after the other, for want of vectors. */
final class AnyWallSweep implements WallSweep {
    private final FrictionTable friction;
    private final float roughDrag;
    private final double area;
    private final double nx;
    private final double ny;
    private final double nz;
    /** From momentum along the wall to slip velocity: (xx, yy, zz, xy, xz, yz) of a symmetric tensor. */
    private final double[] k;
    private final int[] links;
    /** c_i and 6 w_i of each link. */
    private final double[] cx;
    private final double[] cy;
    private final double[] cz;
    private final double[] weight;

    AnyWallSweep(FrictionTable friction, WallShape wall) {
        this.friction = friction;
        roughDrag = (float) wall.roughDrag();
        area = wall.area();
        nx = wall.normal()[0];
        ny = wall.normal()[1];
        nz = wall.normal()[2];
        k = wall.inverse();
        links = wall.links();
        cx = new double[links.length];
        cy = new double[links.length];
        cz = new double[links.length];
        weight = new double[links.length];
        for (int m = 0; m < links.length; m++) {
            cx[m] = VelocitySet.cx(links[m]);
            cy[m] = VelocitySet.cy(links[m]);
            cz[m] = VelocitySet.cz(links[m]);
            weight[m] = 6 * VelocitySet.weight(links[m]);
        }
    }

    @Override
    public boolean rows() {
        return false;
    }

    @Override
    public double work() {
        return 4;
    }

    @Override
    public void slide(float[] f, int[] base, int[] other, WallList cells, int from, int to, WallRoom room) {
        for (int n = from; n < to; n++) {
            int at = cells.place(n);
            for (int turned = cells.turned()[n]; turned != 0; turned &= turned - 1) {
                int i = Integer.numberOfTrailingZeros(turned);
                f[base[i] + at] = f[other[i] + at];
            }
            cells.stress()[n] = (float) slide(f, base, at);
        }
    }

    /** The formulas of docs/numerics.md; returns rho u_tau^2. */
    private double slide(float[] f, int[] b, int at) {
        double ex = 0;
        double ey = 0;
        double ez = 0;
        for (int m = 0; m < links.length; m++) {
            double twice = 2.0 * f[b[links[m]] + at];
            ex += cx[m] * twice;
            ey += cy[m] * twice;
            ez += cz[m] * twice;
        }
        double x = (double) f[b[1] + at] - f[b[2] + at];
        double y = (double) f[b[3] + at] - f[b[4] + at];
        double z = (double) f[b[5] + at] - f[b[6] + at];
        double xy = (double) f[b[7] + at] - f[b[8] + at];
        double xz = (double) f[b[9] + at] - f[b[10] + at];
        double yz = (double) f[b[11] + at] - f[b[12] + at];
        double xMinusY = (double) f[b[13] + at] - f[b[14] + at];
        double xMinusZ = (double) f[b[15] + at] - f[b[16] + at];
        double yMinusZ = (double) f[b[17] + at] - f[b[18] + at];
        double xyz = (double) f[b[19] + at] - f[b[20] + at];
        double xyMinusZ = (double) f[b[21] + at] - f[b[22] + at];
        double xzMinusY = (double) f[b[23] + at] - f[b[24] + at];
        double yzMinusX = (double) f[b[25] + at] - f[b[26] + at];
        double fx = x + xy + xMinusY + xz + xMinusZ + xyz + xyMinusZ + xzMinusY - yzMinusX - ex;
        double fy = y + xy - xMinusY + yz + yMinusZ + xyz + xyMinusZ - xzMinusY + yzMinusX - ey;
        double fz = z + xz - xMinusZ + yz - yMinusZ + xyz - xyMinusZ + xzMinusY + yzMinusX - ez;
        double through = fx * nx + fy * ny + fz * nz;
        fx -= through * nx;
        fy -= through * ny;
        fz -= through * nz;
        double along = Math.sqrt(fx * fx + fy * fy + fz * fz);
        double rate = friction.rate((float) (along / density(f, b, at)), roughDrag);
        double px = -rate * area * fx - ex;
        double py = -rate * area * fy - ey;
        double pz = -rate * area * fz - ez;
        double qx = k[0] * px + k[3] * py + k[4] * pz;
        double qy = k[3] * px + k[1] * py + k[5] * pz;
        double qz = k[4] * px + k[5] * py + k[2] * pz;
        for (int m = 0; m < links.length; m++) {
            f[b[links[m]] + at] += (float) (weight[m] * (cx[m] * qx + cy[m] * qy + cz[m] * qz));
        }
        return rate * along;
    }

    private static double density(float[] f, int[] b, int at) {
        double even = 0;
        double odd = 1;
        for (int i = 0; i < VelocitySet.Q - 1; i += 2) {
            even += f[b[i] + at];
            odd += f[b[i + 1] + at];
        }
        return even + odd + f[b[VelocitySet.Q - 1] + at];
    }
}
