package slackwater.backend.cpu;

import static jdk.incubator.vector.FloatVector.fromArray;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.VectorSpecies;
import slackwater.lattice.CollisionOperator.Bgk;

/**
 * Single-relaxation-time collision with an eddy viscosity, a vector of cells at a time. Populations come in opposite
 * pairs: their sum carries the even moments, their difference the odd ones. With e = rho u u the equilibrium of a pair
 * is w (rho - 1.5 tr e + 4.5 c.e.c) +- 3 w c.j, with w = 2/27, 1/54 and 1/216. The work is cut into a few methods over
 * some hundred cells, with the moments kept between them: one method for all is more than the just-in-time compiler
 * takes. One object for each thread.
 */
final class BgkSweep implements Sweep {
    private static final VectorSpecies<Float> SPECIES = Lanes.FLOATS;
    /** So many cells that their populations and moments stay in the nearest cache. */
    private static final int PORTION = 256;

    private final float tau;
    private final float[] eddy;
    private final float[] common = row();
    private final float[] jx = row();
    private final float[] jy = row();
    private final float[] jz = row();
    private final float[] exx = row();
    private final float[] eyy = row();
    private final float[] ezz = row();
    private final float[] exy = row();
    private final float[] exz = row();
    private final float[] eyz = row();
    private final float[] omega = row();

    /** @param eddy 18 sqrt(2) l^2 of every cell, for its mixing length l, in the array's layout */
    BgkSweep(Bgk operator, float[] eddy) {
        tau = (float) operator.relaxationTime();
        this.eddy = eddy;
    }

    private static float[] row() {
        return new float[PORTION + SPECIES.length()];
    }

    @Override
    public void collide(float[] f, int[] b, int from, int to) {
        for (int x = from; x < to; x += PORTION) {
            int end = Math.min(x + PORTION, to);
            moments(f, b, x, end);
            relaxFaces(f, b, x, end);
            relaxEdges(f, b, x, end);
            relaxCorners(f, b, x, end);
        }
    }

    /** Density, momentum, rho u u (with its factors) and relaxation rate of some cells. */
    private void moments(float[] f, int[] b, int from, int to) {
        int step = SPECIES.length();
        for (int n = 0, x = from; x < to; n += step, x += step) {
            FloatVector p = fromArray(SPECIES, f, b[1] + x);
            FloatVector m = fromArray(SPECIES, f, b[2] + x);
            FloatVector sxx = p.add(m);
            FloatVector jx = p.sub(m);
            p = fromArray(SPECIES, f, b[3] + x);
            m = fromArray(SPECIES, f, b[4] + x);
            FloatVector syy = p.add(m);
            FloatVector jy = p.sub(m);
            p = fromArray(SPECIES, f, b[5] + x);
            m = fromArray(SPECIES, f, b[6] + x);
            FloatVector szz = p.add(m);
            FloatVector jz = p.sub(m);
            FloatVector rho = fromArray(SPECIES, f, b[0] + x).add(sxx).add(syy).add(szz);
            p = fromArray(SPECIES, f, b[7] + x);
            m = fromArray(SPECIES, f, b[8] + x);
            FloatVector even = p.add(m);
            FloatVector odd = p.sub(m);
            FloatVector sxy = even;
            FloatVector both = even;
            jx = jx.add(odd);
            jy = jy.add(odd);
            p = fromArray(SPECIES, f, b[13] + x);
            m = fromArray(SPECIES, f, b[14] + x);
            even = p.add(m);
            odd = p.sub(m);
            sxy = sxy.sub(even);
            both = both.add(even);
            jx = jx.add(odd);
            jy = jy.sub(odd);
            sxx = sxx.add(both);
            syy = syy.add(both);
            rho = rho.add(both);
            p = fromArray(SPECIES, f, b[9] + x);
            m = fromArray(SPECIES, f, b[10] + x);
            even = p.add(m);
            odd = p.sub(m);
            FloatVector sxz = even;
            both = even;
            jx = jx.add(odd);
            jz = jz.add(odd);
            p = fromArray(SPECIES, f, b[15] + x);
            m = fromArray(SPECIES, f, b[16] + x);
            even = p.add(m);
            odd = p.sub(m);
            sxz = sxz.sub(even);
            both = both.add(even);
            jx = jx.add(odd);
            jz = jz.sub(odd);
            sxx = sxx.add(both);
            szz = szz.add(both);
            rho = rho.add(both);
            p = fromArray(SPECIES, f, b[11] + x);
            m = fromArray(SPECIES, f, b[12] + x);
            even = p.add(m);
            odd = p.sub(m);
            FloatVector syz = even;
            both = even;
            jy = jy.add(odd);
            jz = jz.add(odd);
            p = fromArray(SPECIES, f, b[17] + x);
            m = fromArray(SPECIES, f, b[18] + x);
            even = p.add(m);
            odd = p.sub(m);
            syz = syz.sub(even);
            both = both.add(even);
            jy = jy.add(odd);
            jz = jz.sub(odd);
            syy = syy.add(both);
            szz = szz.add(both);
            rho = rho.add(both);
            p = fromArray(SPECIES, f, b[19] + x);
            m = fromArray(SPECIES, f, b[20] + x);
            even = p.add(m);
            odd = p.sub(m);
            both = even;
            sxy = sxy.add(even);
            sxz = sxz.add(even);
            syz = syz.add(even);
            jx = jx.add(odd);
            jy = jy.add(odd);
            jz = jz.add(odd);
            p = fromArray(SPECIES, f, b[21] + x);
            m = fromArray(SPECIES, f, b[22] + x);
            even = p.add(m);
            odd = p.sub(m);
            both = both.add(even);
            sxy = sxy.add(even);
            sxz = sxz.sub(even);
            syz = syz.sub(even);
            jx = jx.add(odd);
            jy = jy.add(odd);
            jz = jz.sub(odd);
            p = fromArray(SPECIES, f, b[23] + x);
            m = fromArray(SPECIES, f, b[24] + x);
            even = p.add(m);
            odd = p.sub(m);
            both = both.add(even);
            sxy = sxy.sub(even);
            sxz = sxz.add(even);
            syz = syz.sub(even);
            jx = jx.add(odd);
            jy = jy.sub(odd);
            jz = jz.add(odd);
            p = fromArray(SPECIES, f, b[25] + x);
            m = fromArray(SPECIES, f, b[26] + x);
            even = p.add(m);
            odd = p.sub(m);
            both = both.add(even);
            sxy = sxy.sub(even);
            sxz = sxz.sub(even);
            syz = syz.add(even);
            jx = jx.sub(odd);
            jy = jy.add(odd);
            jz = jz.add(odd);
            sxx = sxx.add(both);
            syy = syy.add(both);
            szz = szz.add(both);
            rho = rho.add(both);

            FloatVector inverse = FloatVector.broadcast(SPECIES, 1f).div(rho.add(1f));
            FloatVector third = rho.mul(1f / 3);
            FloatVector exx = jx.mul(jx).mul(inverse);
            FloatVector eyy = jy.mul(jy).mul(inverse);
            FloatVector ezz = jz.mul(jz).mul(inverse);
            FloatVector exy = jx.mul(jy).mul(inverse);
            FloatVector exz = jx.mul(jz).mul(inverse);
            FloatVector eyz = jy.mul(jz).mul(inverse);
            sxx = sxx.sub(third).sub(exx);
            syy = syy.sub(third).sub(eyy);
            szz = szz.sub(third).sub(ezz);
            sxy = sxy.sub(exy);
            sxz = sxz.sub(exz);
            syz = syz.sub(eyz);
            FloatVector shear = sxy.mul(sxy).add(sxz.mul(sxz)).add(syz.mul(syz));
            FloatVector contraction = sxx.mul(sxx).add(syy.mul(syy)).add(szz.mul(szz)).add(shear).add(shear);
            FloatVector effective = contraction.sqrt().mul(inverse).mul(fromArray(SPECIES, eddy, x)).add(tau * tau)
                    .sqrt().add(tau);
            FloatVector.broadcast(SPECIES, 2f).div(effective).intoArray(omega, n);
            rho.sub(exx.add(eyy).add(ezz).mul(1.5f)).intoArray(common, n);
            jx.intoArray(this.jx, n);
            jy.intoArray(this.jy, n);
            jz.intoArray(this.jz, n);
            exx.mul(4.5f).intoArray(this.exx, n);
            eyy.mul(4.5f).intoArray(this.eyy, n);
            ezz.mul(4.5f).intoArray(this.ezz, n);
            exy.mul(9f).intoArray(this.exy, n);
            exz.mul(9f).intoArray(this.exz, n);
            eyz.mul(9f).intoArray(this.eyz, n);
        }
    }

    private void relaxFaces(float[] f, int[] b, int from, int to) {
        int step = SPECIES.length();
        for (int n = 0, x = from; x < to; n += step, x += step) {
            FloatVector common = fromArray(SPECIES, this.common, n);
            FloatVector exx = fromArray(SPECIES, this.exx, n);
            FloatVector eyy = fromArray(SPECIES, this.eyy, n);
            FloatVector ezz = fromArray(SPECIES, this.ezz, n);
            FloatVector jx = fromArray(SPECIES, this.jx, n);
            FloatVector jy = fromArray(SPECIES, this.jy, n);
            FloatVector jz = fromArray(SPECIES, this.jz, n);
            FloatVector omega = fromArray(SPECIES, this.omega, n);
            FloatVector r = fromArray(SPECIES, f, b[0] + x);
            r.add(omega.mul(common.mul(8f / 27).sub(r))).intoArray(f, b[0] + x);
            FloatVector even = common.add(exx).mul(2f / 27);
            FloatVector odd = jx.mul(2f / 9);
            FloatVector p = fromArray(SPECIES, f, b[1] + x);
            FloatVector m = fromArray(SPECIES, f, b[2] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[2] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[1] + x);
            even = common.add(eyy).mul(2f / 27);
            odd = jy.mul(2f / 9);
            p = fromArray(SPECIES, f, b[3] + x);
            m = fromArray(SPECIES, f, b[4] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[4] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[3] + x);
            even = common.add(ezz).mul(2f / 27);
            odd = jz.mul(2f / 9);
            p = fromArray(SPECIES, f, b[5] + x);
            m = fromArray(SPECIES, f, b[6] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[6] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[5] + x);
        }
    }

    private void relaxEdges(float[] f, int[] b, int from, int to) {
        int step = SPECIES.length();
        for (int n = 0, x = from; x < to; n += step, x += step) {
            FloatVector common = fromArray(SPECIES, this.common, n).mul(1f / 54);
            FloatVector exx = fromArray(SPECIES, this.exx, n).mul(1f / 54);
            FloatVector eyy = fromArray(SPECIES, this.eyy, n).mul(1f / 54);
            FloatVector ezz = fromArray(SPECIES, this.ezz, n).mul(1f / 54);
            FloatVector exy = fromArray(SPECIES, this.exy, n).mul(1f / 54);
            FloatVector exz = fromArray(SPECIES, this.exz, n).mul(1f / 54);
            FloatVector eyz = fromArray(SPECIES, this.eyz, n).mul(1f / 54);
            FloatVector jx = fromArray(SPECIES, this.jx, n).mul(1f / 18);
            FloatVector jy = fromArray(SPECIES, this.jy, n).mul(1f / 18);
            FloatVector jz = fromArray(SPECIES, this.jz, n).mul(1f / 18);
            FloatVector omega = fromArray(SPECIES, this.omega, n);
            FloatVector both = common.add(exx).add(eyy);
            FloatVector even = both.add(exy);
            FloatVector odd = jx.add(jy);
            FloatVector p = fromArray(SPECIES, f, b[7] + x);
            FloatVector m = fromArray(SPECIES, f, b[8] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[8] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[7] + x);
            even = both.sub(exy);
            odd = jx.sub(jy);
            p = fromArray(SPECIES, f, b[13] + x);
            m = fromArray(SPECIES, f, b[14] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[14] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[13] + x);
            both = common.add(exx).add(ezz);
            even = both.add(exz);
            odd = jx.add(jz);
            p = fromArray(SPECIES, f, b[9] + x);
            m = fromArray(SPECIES, f, b[10] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[10] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[9] + x);
            even = both.sub(exz);
            odd = jx.sub(jz);
            p = fromArray(SPECIES, f, b[15] + x);
            m = fromArray(SPECIES, f, b[16] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[16] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[15] + x);
            both = common.add(eyy).add(ezz);
            even = both.add(eyz);
            odd = jy.add(jz);
            p = fromArray(SPECIES, f, b[11] + x);
            m = fromArray(SPECIES, f, b[12] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[12] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[11] + x);
            even = both.sub(eyz);
            odd = jy.sub(jz);
            p = fromArray(SPECIES, f, b[17] + x);
            m = fromArray(SPECIES, f, b[18] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[18] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[17] + x);
        }
    }

    private void relaxCorners(float[] f, int[] b, int from, int to) {
        int step = SPECIES.length();
        for (int n = 0, x = from; x < to; n += step, x += step) {
            FloatVector both = fromArray(SPECIES, this.common, n).add(fromArray(SPECIES, this.exx, n))
                    .add(fromArray(SPECIES, this.eyy, n)).add(fromArray(SPECIES, this.ezz, n)).mul(1f / 216);
            FloatVector exy = fromArray(SPECIES, this.exy, n).mul(1f / 216);
            FloatVector exz = fromArray(SPECIES, this.exz, n).mul(1f / 216);
            FloatVector eyz = fromArray(SPECIES, this.eyz, n).mul(1f / 216);
            FloatVector jx = fromArray(SPECIES, this.jx, n).mul(1f / 72);
            FloatVector jy = fromArray(SPECIES, this.jy, n).mul(1f / 72);
            FloatVector jz = fromArray(SPECIES, this.jz, n).mul(1f / 72);
            FloatVector omega = fromArray(SPECIES, this.omega, n);
            FloatVector even = both.add(exy).add(exz).add(eyz);
            FloatVector odd = jx.add(jy).add(jz);
            FloatVector p = fromArray(SPECIES, f, b[19] + x);
            FloatVector m = fromArray(SPECIES, f, b[20] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[20] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[19] + x);
            even = both.add(exy).sub(exz).sub(eyz);
            odd = jx.add(jy).sub(jz);
            p = fromArray(SPECIES, f, b[21] + x);
            m = fromArray(SPECIES, f, b[22] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[22] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[21] + x);
            even = both.sub(exy).add(exz).sub(eyz);
            odd = jx.sub(jy).add(jz);
            p = fromArray(SPECIES, f, b[23] + x);
            m = fromArray(SPECIES, f, b[24] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[24] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[23] + x);
            even = both.sub(exy).sub(exz).add(eyz);
            odd = jy.add(jz).sub(jx);
            p = fromArray(SPECIES, f, b[25] + x);
            m = fromArray(SPECIES, f, b[26] + x);
            p.add(omega.mul(even.add(odd).sub(p))).intoArray(f, b[26] + x);
            m.add(omega.mul(even.sub(odd).sub(m))).intoArray(f, b[25] + x);
        }
    }
}
