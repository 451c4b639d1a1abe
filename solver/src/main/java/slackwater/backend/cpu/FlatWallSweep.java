package slackwater.backend.cpu;

import static jdk.incubator.vector.FloatVector.fromArray;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.VectorMask;
import jdk.incubator.vector.VectorSpecies;
import slackwater.lattice.VelocitySet;

/**
 * The law of the wall on a row of cells along x beside a flat wall, a vector of cells at a time. There 6 sum of w c c
 * is a third along the wall, so s = 3 (F - E) and f_i += 18 w_i c_i.(F - E). Formulas as in {@link AnyWallSweep}.
 */
final class FlatWallSweep implements WallSweep {
    private static final VectorSpecies<Float> SPECIES = FloatVector.SPECIES_PREFERRED;

    private final FrictionTable friction;
    private final float roughDrag;
    private final int[] links;
    /** Components of every direction along the wall: x and the other one. */
    private final float[] alongX = new float[VelocitySet.Q];
    private final float[] alongOther = new float[VelocitySet.Q];

    /** For a wall whose normal is along y or z. */
    FlatWallSweep(FrictionTable friction, WallShape wall) {
        this.friction = friction;
        roughDrag = (float) wall.roughDrag();
        links = wall.links();
        boolean upright = wall.normal()[1] != 0;
        for (int i = 0; i < VelocitySet.Q; i++) {
            alongX[i] = VelocitySet.cx(i);
            alongOther[i] = upright ? VelocitySet.cz(i) : VelocitySet.cy(i);
        }
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
        FloatVector density = fromArray(SPECIES, f, b[0] + x).add(1f);
        FloatVector freeX = FloatVector.zero(SPECIES);
        FloatVector freeOther = FloatVector.zero(SPECIES);
        for (int i = 1; i < VelocitySet.Q; i += 2) {
            FloatVector plus = fromArray(SPECIES, f, b[i] + x);
            FloatVector minus = fromArray(SPECIES, f, b[i + 1] + x);
            FloatVector odd = plus.sub(minus);
            density = density.add(plus).add(minus);
            freeX = freeX.add(odd.mul(alongX[i]));
            freeOther = freeOther.add(odd.mul(alongOther[i]));
        }
        FloatVector ex = FloatVector.zero(SPECIES);
        FloatVector eOther = FloatVector.zero(SPECIES);
        for (int i : links) {
            FloatVector twice = fromArray(SPECIES, f, b[i] + x).mul(2f);
            ex = ex.add(twice.mul(alongX[i]));
            eOther = eOther.add(twice.mul(alongOther[i]));
        }
        freeX = freeX.sub(ex);
        freeOther = freeOther.sub(eOther);
        FloatVector along = freeX.mul(freeX).add(freeOther.mul(freeOther)).sqrt();
        FloatVector rate = rate(along, density, room);
        System.arraycopy(room, 0, stress, from, cells);
        push(f, b, x, cells, rate.mul(freeX).add(ex), rate.mul(freeOther).add(eOther));
    }

    /** The share of the momentum that the wall takes; leaves its stress at the start of the room. */
    private FloatVector rate(FloatVector along, FloatVector density, float[] room) {
        int lanes = SPECIES.length();
        along.intoArray(room, 0);
        along.div(density).intoArray(room, lanes);
        for (int n = 0; n < lanes; n++) {
            float rate = (float) friction.rate(room[lanes + n], roughDrag);
            room[n] *= rate;
            room[lanes + n] = rate;
        }
        return fromArray(SPECIES, room, lanes);
    }

    /** Takes this momentum off the cells of the row by way of the links. */
    private void push(float[] f, int[] b, int x, int cells, FloatVector takenX, FloatVector takenOther) {
        VectorMask<Float> row = SPECIES.indexInRange(0, cells);
        for (int i : links) {
            float weight = -18 * (float) VelocitySet.weight(i);
            FloatVector change = takenX.mul(weight * alongX[i]).add(takenOther.mul(weight * alongOther[i]));
            fromArray(SPECIES, f, b[i] + x).add(change).intoArray(f, b[i] + x, row);
        }
    }
}
