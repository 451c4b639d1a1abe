package slackwater.backend.cpu;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.VectorSpecies;
import slackwater.lattice.CollisionOperator.Bgk;

/** Single-relaxation-time collision with the Smagorinsky eddy viscosity, a vector of cells at a time. */
final class BgkSweep implements Sweep {
    private static final VectorSpecies<Float> SPECIES = FloatVector.SPECIES_PREFERRED;

    private final float tau;
    private final float eddy;

    BgkSweep(Bgk operator) {
        tau = (float) operator.relaxationTime();
        eddy = (float) (18 * Math.sqrt(2) * operator.smagorinsky() * operator.smagorinsky());
    }

    @Override
    public void collide(float[] f, int[] b, int from, int to) {
        int step = SPECIES.length();
        for (int x = from; x < to; x += step) {
            FloatVector f0 = load(f, b[0] + x);
            FloatVector f1 = load(f, b[1] + x);
            FloatVector f2 = load(f, b[2] + x);
            FloatVector f3 = load(f, b[3] + x);
            FloatVector f4 = load(f, b[4] + x);
            FloatVector f5 = load(f, b[5] + x);
            FloatVector f6 = load(f, b[6] + x);
            FloatVector f7 = load(f, b[7] + x);
            FloatVector f8 = load(f, b[8] + x);
            FloatVector f9 = load(f, b[9] + x);
            FloatVector f10 = load(f, b[10] + x);
            FloatVector f11 = load(f, b[11] + x);
            FloatVector f12 = load(f, b[12] + x);
            FloatVector f13 = load(f, b[13] + x);
            FloatVector f14 = load(f, b[14] + x);
            FloatVector f15 = load(f, b[15] + x);
            FloatVector f16 = load(f, b[16] + x);
            FloatVector f17 = load(f, b[17] + x);
            FloatVector f18 = load(f, b[18] + x);

            FloatVector xy = f7.add(f8).add(f13).add(f14);
            FloatVector xz = f9.add(f10).add(f15).add(f16);
            FloatVector yz = f11.add(f12).add(f17).add(f18);
            FloatVector sxx = f1.add(f2).add(xy).add(xz);
            FloatVector syy = f3.add(f4).add(xy).add(yz);
            FloatVector szz = f5.add(f6).add(xz).add(yz);
            FloatVector rho = f0.add(sxx).add(f3).add(f4).add(yz).add(f5).add(f6);
            FloatVector jx = f1.sub(f2).add(f7).sub(f8).add(f9).sub(f10).add(f13).sub(f14).add(f15).sub(f16);
            FloatVector jy = f3.sub(f4).add(f7).sub(f8).add(f11).sub(f12).sub(f13).add(f14).add(f17).sub(f18);
            FloatVector jz = f5.sub(f6).add(f9).sub(f10).add(f11).sub(f12).sub(f15).add(f16).sub(f17).add(f18);
            FloatVector inverse = FloatVector.broadcast(SPECIES, 1f).div(rho.add(1f));
            FloatVector third = rho.mul(1f / 3);
            FloatVector exx = jx.mul(jx).mul(inverse);
            FloatVector eyy = jy.mul(jy).mul(inverse);
            FloatVector ezz = jz.mul(jz).mul(inverse);
            FloatVector exy = jx.mul(jy).mul(inverse);
            FloatVector exz = jx.mul(jz).mul(inverse);
            FloatVector eyz = jy.mul(jz).mul(inverse);

            FloatVector n = sxx.sub(third).sub(exx);
            FloatVector normal = n.mul(n);
            n = syy.sub(third).sub(eyy);
            normal = normal.add(n.mul(n));
            n = szz.sub(third).sub(ezz);
            normal = normal.add(n.mul(n));
            n = f7.add(f8).sub(f13).sub(f14).sub(exy);
            FloatVector shear = n.mul(n);
            n = f9.add(f10).sub(f15).sub(f16).sub(exz);
            shear = shear.add(n.mul(n));
            n = f11.add(f12).sub(f17).sub(f18).sub(eyz);
            shear = shear.add(n.mul(n));
            FloatVector contraction = normal.add(shear).add(shear);
            FloatVector effective = contraction.sqrt().mul(inverse).mul(eddy).add(tau * tau).sqrt().add(tau).mul(0.5f);
            FloatVector omega = FloatVector.broadcast(SPECIES, 1f).div(effective);

            FloatVector common = rho.sub(exx.add(eyy).add(ezz).mul(1.5f));
            f0.add(omega.mul(common.mul(1f / 3).sub(f0))).intoArray(f, b[0] + x);
            exx = exx.mul(4.5f);
            eyy = eyy.mul(4.5f);
            ezz = ezz.mul(4.5f);
            FloatVector even = common.add(exx).mul(1f / 18);
            FloatVector odd = jx.mul(1f / 6);
            f1.add(omega.mul(even.add(odd).sub(f1))).intoArray(f, b[2] + x);
            f2.add(omega.mul(even.sub(odd).sub(f2))).intoArray(f, b[1] + x);
            even = common.add(eyy).mul(1f / 18);
            odd = jy.mul(1f / 6);
            f3.add(omega.mul(even.add(odd).sub(f3))).intoArray(f, b[4] + x);
            f4.add(omega.mul(even.sub(odd).sub(f4))).intoArray(f, b[3] + x);
            even = common.add(ezz).mul(1f / 18);
            odd = jz.mul(1f / 6);
            f5.add(omega.mul(even.add(odd).sub(f5))).intoArray(f, b[6] + x);
            f6.add(omega.mul(even.sub(odd).sub(f6))).intoArray(f, b[5] + x);
            jx = jx.mul(1f / 12);
            jy = jy.mul(1f / 12);
            jz = jz.mul(1f / 12);
            FloatVector both = common.add(exx).add(eyy).mul(1f / 36);
            exy = exy.mul(0.25f);
            even = both.add(exy);
            odd = jx.add(jy);
            f7.add(omega.mul(even.add(odd).sub(f7))).intoArray(f, b[8] + x);
            f8.add(omega.mul(even.sub(odd).sub(f8))).intoArray(f, b[7] + x);
            even = both.sub(exy);
            odd = jx.sub(jy);
            f13.add(omega.mul(even.add(odd).sub(f13))).intoArray(f, b[14] + x);
            f14.add(omega.mul(even.sub(odd).sub(f14))).intoArray(f, b[13] + x);
            both = common.add(exx).add(ezz).mul(1f / 36);
            exz = exz.mul(0.25f);
            even = both.add(exz);
            odd = jx.add(jz);
            f9.add(omega.mul(even.add(odd).sub(f9))).intoArray(f, b[10] + x);
            f10.add(omega.mul(even.sub(odd).sub(f10))).intoArray(f, b[9] + x);
            even = both.sub(exz);
            odd = jx.sub(jz);
            f15.add(omega.mul(even.add(odd).sub(f15))).intoArray(f, b[16] + x);
            f16.add(omega.mul(even.sub(odd).sub(f16))).intoArray(f, b[15] + x);
            both = common.add(eyy).add(ezz).mul(1f / 36);
            eyz = eyz.mul(0.25f);
            even = both.add(eyz);
            odd = jy.add(jz);
            f11.add(omega.mul(even.add(odd).sub(f11))).intoArray(f, b[12] + x);
            f12.add(omega.mul(even.sub(odd).sub(f12))).intoArray(f, b[11] + x);
            even = both.sub(eyz);
            odd = jy.sub(jz);
            f17.add(omega.mul(even.add(odd).sub(f17))).intoArray(f, b[18] + x);
            f18.add(omega.mul(even.sub(odd).sub(f18))).intoArray(f, b[17] + x);
        }
    }

    private static FloatVector load(float[] f, int at) {
        return FloatVector.fromArray(SPECIES, f, at);
    }
}
