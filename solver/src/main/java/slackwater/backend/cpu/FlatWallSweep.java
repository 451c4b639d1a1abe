package slackwater.backend.cpu;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.VectorSpecies;
import slackwater.lattice.VelocitySet;

/**
 * The law of the wall on a row of cells along x beside a flat wall, a vector of cells at a time. There 6 sum of w c c
 * is a third along the wall, so what a wall takes less or more along x goes half to one oblique link and half off the
 * other: f(n+x) += (F - E)/2, f(n-x) -= (F - E)/2. Formulas as in {@link AnyWallSweep}.
 */
final class FlatWallSweep implements WallSweep {
    private static final VectorSpecies<Float> SPECIES = FloatVector.SPECIES_PREFERRED;

    private final FrictionTable friction;
    private final boolean upright;
    private final float roughDrag;
    private final int xPlus;
    private final int xMinus;
    private final int otherPlus;
    private final int otherMinus;

    /** For a wall whose normal is along y (upright) or z. */
    FlatWallSweep(FrictionTable friction, WallShape wall) {
        this.friction = friction;
        upright = wall.normal()[1] != 0;
        roughDrag = (float) wall.roughDrag();
        int ny = (int) wall.normal()[1];
        int nz = (int) wall.normal()[2];
        xPlus = VelocitySet.direction(1, ny, nz);
        xMinus = VelocitySet.direction(-1, ny, nz);
        otherPlus = upright ? VelocitySet.direction(0, ny, 1) : VelocitySet.direction(0, 1, nz);
        otherMinus = upright ? VelocitySet.direction(0, ny, -1) : VelocitySet.direction(0, -1, nz);
    }

    /** Room for one vector's worth of numbers, twice. */
    static float[] room() {
        return new float[2 * SPECIES.length()];
    }

    @Override
    public void slide(float[] f, int[] base, int at, int length, float[] stress, int from, float[] room) {
        for (int n = 0; n < length; n += SPECIES.length()) {
            slideVector(f, base, at + n, Math.min(SPECIES.length(), length - n), stress, from + n, room);
        }
    }

    private void slideVector(float[] f, int[] b, int x, int cells, float[] stress, int from, float[] room) {
        int lanes = SPECIES.length();
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
        FloatVector xPair = load(f, b[1] + x).sub(load(f, b[2] + x));
        FloatVector jx = xPair.add(f7).sub(f8).add(f9).sub(f10).add(f13).sub(f14).add(f15).sub(f16);
        FloatVector jy = load(f, b[3] + x).sub(load(f, b[4] + x)).add(f7).sub(f8).add(f11).sub(f12).sub(f13).add(f14)
                .add(f17).sub(f18);
        FloatVector jz = load(f, b[5] + x).sub(load(f, b[6] + x)).add(f9).sub(f10).add(f11).sub(f12).sub(f15).add(f16)
                .sub(f17).add(f18);
        FloatVector density = load(f, b[0] + x).add(load(f, b[1] + x)).add(load(f, b[2] + x)).add(load(f, b[3] + x))
                .add(load(f, b[4] + x)).add(load(f, b[5] + x)).add(load(f, b[6] + x)).add(f7).add(f8).add(f9)
                .add(f10).add(f11).add(f12).add(f13).add(f14).add(f15).add(f16).add(f17).add(f18).add(1f);
        FloatVector ex = load(f, b[xPlus] + x).sub(load(f, b[xMinus] + x)).mul(2f);
        FloatVector eo = load(f, b[otherPlus] + x).sub(load(f, b[otherMinus] + x)).mul(2f);
        FloatVector freeX = jx.sub(ex);
        FloatVector freeOther = (upright ? jz : jy).sub(eo);
        FloatVector along = freeX.mul(freeX).add(freeOther.mul(freeOther)).sqrt();
        along.intoArray(room, 0);
        along.div(density).intoArray(room, lanes);
        for (int n = 0; n < lanes; n++) {
            float rate = (float) friction.rate(room[lanes + n], roughDrag);
            room[n] *= rate;
            room[lanes + n] = rate;
        }
        System.arraycopy(room, 0, stress, from, cells);
        FloatVector rate = load(room, lanes);
        add(f, b[xPlus] + x, b[xMinus] + x, rate.mul(freeX).add(ex).mul(-0.5f), cells, room);
        add(f, b[otherPlus] + x, b[otherMinus] + x, rate.mul(freeOther).add(eo).mul(-0.5f), cells, room);
    }

    /** Adds to one link and takes off the other; of the last vector only the cells of the row. */
    private static void add(float[] f, int plus, int minus, FloatVector half, int cells, float[] room) {
        if (cells == SPECIES.length()) {
            load(f, plus).add(half).intoArray(f, plus);
            load(f, minus).sub(half).intoArray(f, minus);
            return;
        }
        half.intoArray(room, 0);
        for (int n = 0; n < cells; n++) {
            f[plus + n] += room[n];
            f[minus + n] -= room[n];
        }
    }

    private static FloatVector load(float[] f, int at) {
        return FloatVector.fromArray(SPECIES, f, at);
    }
}
