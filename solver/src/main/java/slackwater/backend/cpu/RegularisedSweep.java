package slackwater.backend.cpu;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.VectorSpecies;
import slackwater.lattice.CollisionOperator.RecursiveRegularised;

/**
 * Recursive regularised collision, a vector of cells at a time. Populations come in opposite pairs: their sum carries
 * the even moments, their difference the odd ones. Formulas as in the reference back end, multiplied out for D3Q19:
 * with N = (1 - 1/tau) P, T = N + j u and a_xyy = u_y (T_xy + N_xy) + u_x N_yy and its like,
 * f(+-x) = (base + 4.5 T_xx)/18 +- (j_x/6 - (a_xyy + a_xzz)/2) and
 * f(x+y) = (base + 4.5 (T_xx + T_yy) + 9 T_xy)/36 + (j_x + j_y)/12 + (a_xyy + a_xxy)/4.
 */
final class RegularisedSweep implements Sweep {
    private static final VectorSpecies<Float> SPECIES = FloatVector.SPECIES_PREFERRED;

    private final float tau;
    private final float eddy;

    RegularisedSweep(RecursiveRegularised operator) {
        tau = (float) operator.relaxationTime();
        eddy = (float) (18 * Math.sqrt(2) * operator.smagorinsky() * operator.smagorinsky());
    }

    @Override
    public void collide(float[] f, int[] b, int from, int to) {
        int step = SPECIES.length();
        for (int x = from; x < to; x += step) {
            FloatVector p = load(f, b[1] + x);
            FloatVector m = load(f, b[2] + x);
            FloatVector e1 = p.add(m);
            FloatVector o1 = p.sub(m);
            p = load(f, b[3] + x);
            m = load(f, b[4] + x);
            FloatVector e3 = p.add(m);
            FloatVector o3 = p.sub(m);
            p = load(f, b[5] + x);
            m = load(f, b[6] + x);
            FloatVector e5 = p.add(m);
            FloatVector o5 = p.sub(m);
            p = load(f, b[7] + x);
            m = load(f, b[8] + x);
            FloatVector e7 = p.add(m);
            FloatVector o7 = p.sub(m);
            p = load(f, b[9] + x);
            m = load(f, b[10] + x);
            FloatVector e9 = p.add(m);
            FloatVector o9 = p.sub(m);
            p = load(f, b[11] + x);
            m = load(f, b[12] + x);
            FloatVector e11 = p.add(m);
            FloatVector o11 = p.sub(m);
            p = load(f, b[13] + x);
            m = load(f, b[14] + x);
            FloatVector e13 = p.add(m);
            FloatVector o13 = p.sub(m);
            p = load(f, b[15] + x);
            m = load(f, b[16] + x);
            FloatVector e15 = p.add(m);
            FloatVector o15 = p.sub(m);
            p = load(f, b[17] + x);
            m = load(f, b[18] + x);
            FloatVector e17 = p.add(m);
            FloatVector o17 = p.sub(m);

            FloatVector xy = e7.add(e13);
            FloatVector xz = e9.add(e15);
            FloatVector yz = e11.add(e17);
            FloatVector rho = load(f, b[0] + x).add(e1).add(e3).add(e5).add(xy).add(xz).add(yz);
            FloatVector jx = o1.add(o7).add(o9).add(o13).add(o15);
            FloatVector jy = o3.add(o7).add(o11).sub(o13).add(o17);
            FloatVector jz = o5.add(o9).add(o11).sub(o15).sub(o17);
            FloatVector inverse = FloatVector.broadcast(SPECIES, 1f).div(rho.add(1f));
            FloatVector ux = jx.mul(inverse);
            FloatVector uy = jy.mul(inverse);
            FloatVector uz = jz.mul(inverse);

            FloatVector third = rho.mul(1f / 3);
            FloatVector exx = jx.mul(ux);
            FloatVector eyy = jy.mul(uy);
            FloatVector ezz = jz.mul(uz);
            FloatVector exy = jx.mul(uy);
            FloatVector exz = jx.mul(uz);
            FloatVector eyz = jy.mul(uz);
            FloatVector nxx = e1.add(xy).add(xz).sub(third).sub(exx);
            FloatVector nyy = e3.add(xy).add(yz).sub(third).sub(eyy);
            FloatVector nzz = e5.add(xz).add(yz).sub(third).sub(ezz);
            FloatVector nxy = e7.sub(e13).sub(exy);
            FloatVector nxz = e9.sub(e15).sub(exz);
            FloatVector nyz = e11.sub(e17).sub(eyz);
            FloatVector shear = nxy.mul(nxy).add(nxz.mul(nxz)).add(nyz.mul(nyz));
            FloatVector contraction = nxx.mul(nxx).add(nyy.mul(nyy)).add(nzz.mul(nzz)).add(shear).add(shear);
            FloatVector effective = contraction.sqrt().mul(inverse).mul(eddy).add(tau * tau).sqrt().add(tau).mul(0.5f);
            FloatVector keep = effective.sub(1f).div(effective);
            nxx = nxx.mul(keep);
            nyy = nyy.mul(keep);
            nzz = nzz.mul(keep);
            nxy = nxy.mul(keep);
            nxz = nxz.mul(keep);
            nyz = nyz.mul(keep);

            FloatVector txx = nxx.add(exx);
            FloatVector tyy = nyy.add(eyy);
            FloatVector tzz = nzz.add(ezz);
            FloatVector txy = nxy.add(exy);
            FloatVector txz = nxz.add(exz);
            FloatVector tyz = nyz.add(eyz);
            FloatVector common = rho.sub(txx.add(tyy).add(tzz).mul(1.5f));
            nxy = nxy.add(txy);
            nxz = nxz.add(txz);
            nyz = nyz.add(tyz);
            FloatVector axyy = uy.mul(nxy).add(ux.mul(nyy));
            FloatVector axzz = uz.mul(nxz).add(ux.mul(nzz));
            FloatVector axxy = ux.mul(nxy).add(uy.mul(nxx));
            FloatVector ayzz = uz.mul(nyz).add(uy.mul(nzz));
            FloatVector axxz = ux.mul(nxz).add(uz.mul(nxx));
            FloatVector ayyz = uy.mul(nyz).add(uz.mul(nyy));
            txx = txx.mul(4.5f);
            tyy = tyy.mul(4.5f);
            tzz = tzz.mul(4.5f);

            common.mul(1f / 3).intoArray(f, b[0] + x);
            p = common.add(txx).mul(1f / 18);
            m = jx.mul(1f / 6).sub(axyy.add(axzz).mul(0.5f));
            p.add(m).intoArray(f, b[2] + x);
            p.sub(m).intoArray(f, b[1] + x);
            p = common.add(tyy).mul(1f / 18);
            m = jy.mul(1f / 6).sub(axxy.add(ayzz).mul(0.5f));
            p.add(m).intoArray(f, b[4] + x);
            p.sub(m).intoArray(f, b[3] + x);
            p = common.add(tzz).mul(1f / 18);
            m = jz.mul(1f / 6).sub(axxz.add(ayyz).mul(0.5f));
            p.add(m).intoArray(f, b[6] + x);
            p.sub(m).intoArray(f, b[5] + x);
            common = common.mul(1f / 36);
            txx = txx.mul(1f / 36);
            tyy = tyy.mul(1f / 36);
            tzz = tzz.mul(1f / 36);
            jx = jx.mul(1f / 12);
            jy = jy.mul(1f / 12);
            jz = jz.mul(1f / 12);
            FloatVector even = common.add(txx).add(tyy);
            txy = txy.mul(0.25f);
            p = even.add(txy);
            m = jx.add(jy).add(axyy.add(axxy).mul(0.25f));
            p.add(m).intoArray(f, b[8] + x);
            p.sub(m).intoArray(f, b[7] + x);
            p = even.sub(txy);
            m = jx.sub(jy).add(axyy.sub(axxy).mul(0.25f));
            p.add(m).intoArray(f, b[14] + x);
            p.sub(m).intoArray(f, b[13] + x);
            even = common.add(txx).add(tzz);
            txz = txz.mul(0.25f);
            p = even.add(txz);
            m = jx.add(jz).add(axzz.add(axxz).mul(0.25f));
            p.add(m).intoArray(f, b[10] + x);
            p.sub(m).intoArray(f, b[9] + x);
            p = even.sub(txz);
            m = jx.sub(jz).add(axzz.sub(axxz).mul(0.25f));
            p.add(m).intoArray(f, b[16] + x);
            p.sub(m).intoArray(f, b[15] + x);
            even = common.add(tyy).add(tzz);
            tyz = tyz.mul(0.25f);
            p = even.add(tyz);
            m = jy.add(jz).add(ayzz.add(ayyz).mul(0.25f));
            p.add(m).intoArray(f, b[12] + x);
            p.sub(m).intoArray(f, b[11] + x);
            p = even.sub(tyz);
            m = jy.sub(jz).add(ayzz.sub(ayyz).mul(0.25f));
            p.add(m).intoArray(f, b[18] + x);
            p.sub(m).intoArray(f, b[17] + x);
        }
    }

    private static FloatVector load(float[] f, int at) {
        return FloatVector.fromArray(SPECIES, f, at);
    }
}
