package slackwater.backend.cpu;

import java.util.stream.IntStream;
import slackwater.lattice.VelocitySet;

/**
 * How a cell touches walls: the directions that they turn round, and what follows from that alone.
 *
 * @param links the directions that arrive from the wall
 * @param roughDrag drag coefficient of the roughest of the walls, 0 if smooth
 * @param area of the wall, in faces of a cell
 * @param normal unit vector into the water
 * @param inverse from momentum along the wall to slip velocity: (xx, yy, zz, xy, xz, yz) of a symmetric tensor
 */
record WallShape(int[] links, double roughDrag, double area, double[] normal, double[] inverse) {
    /** In all but 4 of 100 000 sets of links, the stiffness in a direction along the wall is 0 or at least this. */
    private static final double LEAST_STIFFNESS = 0.02;
    private static final double LEAST_AREA = 1e-6;
    private static final double ON_THE_PLANE = 1e-6;

    /** The shape of a set of directions, given as bits. */
    static WallShape of(int bits, double roughDrag) {
        int[] links = IntStream.range(0, VelocitySet.Q).filter(i -> (bits >> i & 1) == 1).toArray();
        double[] normal = new double[3];
        double[] m = new double[6];
        for (int i : links) {
            double weight = 6 * VelocitySet.weight(i);
            int x = VelocitySet.cx(i);
            int y = VelocitySet.cy(i);
            int z = VelocitySet.cz(i);
            normal[0] += weight * x;
            normal[1] += weight * y;
            normal[2] += weight * z;
            int[] products = {x * x, y * y, z * z, x * y, x * z, y * z};
            for (int n = 0; n < 6; n++) {
                m[n] += weight * products[n];
            }
        }
        double area = Math.sqrt(normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]);
        for (int a = 0; a < 3 && area > 0; a++) {
            normal[a] /= area;
        }
        return new WallShape(links, roughDrag, area, normal, alongWall(normal, m));
    }

    /** The links as bits. */
    int bits() {
        return IntStream.of(links).map(i -> 1 << i).sum();
    }

    /** False for a lone oblique link and for walls on more than one side: plain bounce-back stays as it is. */
    boolean slides() {
        boolean oneSided = IntStream.of(links).allMatch(i -> VelocitySet.cx(i) * normal[0]
                + VelocitySet.cy(i) * normal[1] + VelocitySet.cz(i) * normal[2] >= -ON_THE_PLANE);
        return oneSided && area >= LEAST_AREA && inverse[0] + inverse[1] + inverse[2] > 0;
    }

    /** True for a flat wall across an axis: rows of such cells can be treated together. */
    boolean flat() {
        return links.length == 9 && Math.abs(area - 1) < 1e-9 && IntStream.of(links).allMatch(i -> VelocitySet.cx(i)
                * normal[0] + VelocitySet.cy(i) * normal[1] + VelocitySet.cz(i) * normal[2] == 1);
    }

    /** True if the wall is across x, so that its cells do not lie side by side. */
    boolean acrossX() {
        return normal[0] != 0;
    }

    /** Inverse of m within the plane across the normal; 0 in a direction in which no link can take momentum. */
    private static double[] alongWall(double[] n, double[] m) {
        double h = Math.sqrt(n[0] * n[0] + n[1] * n[1]);
        double[] t = h > 0.1 ? new double[] {-n[1] / h, n[0] / h, 0} : new double[] {n[2], 0, -n[0]};
        double length = Math.sqrt(t[0] * t[0] + t[1] * t[1] + t[2] * t[2]);
        for (int a = 0; a < 3 && length > 0; a++) {
            t[a] /= length;
        }
        double[] v = {n[1] * t[2] - n[2] * t[1], n[2] * t[0] - n[0] * t[2], n[0] * t[1] - n[1] * t[0]};
        double tt = form(t, m, t);
        double vv = form(v, m, v);
        double tv = form(t, m, v);
        double mean = (tt + vv) / 2;
        double spread = Math.sqrt((tt - vv) * (tt - vv) / 4 + tv * tv);
        double small = mean - spread;
        double large = mean + spread;
        if (small >= LEAST_STIFFNESS) {
            return combine(t, v, vv / (small * large), -tv / (small * large), tt / (small * large));
        }
        if (large < LEAST_STIFFNESS) {
            return new double[6];
        }
        double scale = 1 / (large * (large - small));
        return combine(t, v, (tt - small) * scale, tv * scale, (vv - small) * scale);
    }

    private static double form(double[] a, double[] m, double[] b) {
        return m[0] * a[0] * b[0] + m[1] * a[1] * b[1] + m[2] * a[2] * b[2] + m[3] * (a[0] * b[1] + a[1] * b[0])
                + m[4] * (a[0] * b[2] + a[2] * b[0]) + m[5] * (a[1] * b[2] + a[2] * b[1]);
    }

    private static double[] combine(double[] t, double[] v, double tt, double tv, double vv) {
        int[][] pairs = {{0, 0}, {1, 1}, {2, 2}, {0, 1}, {0, 2}, {1, 2}};
        double[] tensor = new double[6];
        for (int n = 0; n < 6; n++) {
            int a = pairs[n][0];
            int b = pairs[n][1];
            tensor[n] = tt * t[a] * t[b] + tv * (t[a] * v[b] + v[a] * t[b]) + vv * v[a] * v[b];
        }
        return tensor;
    }
}
