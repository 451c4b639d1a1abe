package slackwater.backend.cpu;

import static jdk.incubator.vector.FloatVector.fromArray;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.VectorSpecies;
import slackwater.lattice.VelocitySet;

/**
 * The law of the wall on a row of cells along x beside a flat wall, a vector of cells at a time. There 6 sum of w c c
 * is a third along the wall, so s = 3 (F - E) and f_i += 18 w_i c_i.(F - E). Formulas as in {@link AnyWallSweep}.
 */
final class FlatWallSweep implements WallSweep {
    private static final VectorSpecies<Float> SPECIES = FloatVector.SPECIES_PREFERRED;

    /** Room for a row of cells and a vector more. */
    private static final int ROW = WallCells.LONGEST_ROW + SPECIES.length();
    private static final int ALONG = 0;
    private static final int DENSITY = ROW;
    private static final int FREE_X = 2 * ROW;
    private static final int FREE_OTHER = 3 * ROW;
    private static final int E_X = 4 * ROW;
    private static final int E_OTHER = 5 * ROW;
    private static final int RATE = 6 * ROW;
    private static final int KEPT = 7;

    private final FrictionTable friction;
    private final float roughDrag;
    private final int[] links;
    /** What each link takes of momentum along the wall. */
    private final float[] pushX;
    private final float[] pushOther;
    /** Components of every direction along the wall: x and the other one. */
    private final float[] alongX = new float[VelocitySet.Q];
    private final float[] alongOther = new float[VelocitySet.Q];

    /** For a wall whose normal is along y or z. */
    FlatWallSweep(FrictionTable friction, WallShape wall) {
        this.friction = friction;
        roughDrag = (float) wall.roughDrag();
        links = wall.links();
        pushX = new float[links.length];
        pushOther = new float[links.length];
        boolean upright = wall.normal()[1] != 0;
        for (int i = 0; i < VelocitySet.Q; i++) {
            alongX[i] = VelocitySet.cx(i);
            alongOther[i] = upright ? VelocitySet.cz(i) : VelocitySet.cy(i);
        }
        for (int m = 0; m < links.length; m++) {
            float weight = -18 * (float) VelocitySet.weight(links[m]);
            pushX[m] = weight * alongX[links[m]];
            pushOther[m] = weight * alongOther[links[m]];
        }
    }

    /** Room for what the three passes over a row hand on to each other. */
    static float[] room() {
        return new float[KEPT * ROW];
    }

    @Override
    public void slide(float[] f, int[] base, int at, int length, float[] stress, int from, float[] room) {
        momentum(f, base, at, length, room);
        for (int n = 0; n < length; n++) {
            float along = room[ALONG + n];
            float rate = (float) friction.rate(along / room[DENSITY + n], roughDrag);
            stress[from + n] = along * rate;
            room[RATE + n] = rate;
        }
        push(f, base, at, length, room);
    }

    /** Density, F and E of each cell. */
    private void momentum(float[] f, int[] b, int at, int length, float[] room) {
        for (int n = 0, x = at; n < length; n += SPECIES.length(), x += SPECIES.length()) {
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
            freeX.mul(freeX).add(freeOther.mul(freeOther)).sqrt().intoArray(room, ALONG + n);
            density.intoArray(room, DENSITY + n);
            freeX.intoArray(room, FREE_X + n);
            freeOther.intoArray(room, FREE_OTHER + n);
            ex.intoArray(room, E_X + n);
            eOther.intoArray(room, E_OTHER + n);
        }
    }

    /** Takes rate F + E off the cells of the row by way of the links. */
    private void push(float[] f, int[] b, int at, int length, float[] room) {
        int whole = SPECIES.loopBound(length);
        for (int n = 0, x = at; n < whole; n += SPECIES.length(), x += SPECIES.length()) {
            FloatVector rate = fromArray(SPECIES, room, RATE + n);
            FloatVector takenX = rate.mul(fromArray(SPECIES, room, FREE_X + n)).add(
                    fromArray(SPECIES, room, E_X + n));
            FloatVector takenOther = rate.mul(fromArray(SPECIES, room, FREE_OTHER + n)).add(
                    fromArray(SPECIES, room, E_OTHER + n));
            for (int m = 0; m < links.length; m++) {
                int i = links[m];
                takenX.mul(pushX[m]).add(takenOther.mul(pushOther[m])).add(fromArray(SPECIES, f, b[i] + x))
                        .intoArray(f, b[i] + x);
            }
        }
        for (int n = whole; n < length; n++) {
            pushOne(f, b, at + n, room[RATE + n] * room[FREE_X + n] + room[E_X + n],
                    room[RATE + n] * room[FREE_OTHER + n] + room[E_OTHER + n]);
        }
    }

    private void pushOne(float[] f, int[] b, int x, float takenX, float takenOther) {
        for (int m = 0; m < links.length; m++) {
            f[b[links[m]] + x] += takenX * pushX[m] + takenOther * pushOther[m];
        }
    }
}
