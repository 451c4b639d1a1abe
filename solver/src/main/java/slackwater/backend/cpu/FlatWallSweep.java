package slackwater.backend.cpu;

import static jdk.incubator.vector.FloatVector.fromArray;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.VectorSpecies;
import slackwater.lattice.VelocitySet;

/**
 * Bounce-back and the law of the wall on a row of cells beside a flat wall, a vector of cells at a time. There 6 sum of
 * w c c is a third along the wall, so s = 3 (F - E) and f_i += 18 w_i c_i.(F - E). Formulas as in {@link AnyWallSweep}.
 */
final class FlatWallSweep implements WallSweep {
    private static final VectorSpecies<Float> SPECIES = FloatVector.SPECIES_PREFERRED;

    /** Room for a row of cells and a vector more. */
    private static final int ROW = WallCells.LONGEST_RUN + SPECIES.length();
    private static final int ALONG = 0;
    private static final int SPEED = ROW;
    private static final int FREE_A = 2 * ROW;
    private static final int FREE_B = 3 * ROW;
    private static final int E_A = 4 * ROW;
    private static final int E_B = 5 * ROW;
    private static final int RATE = 6 * ROW;
    /** Floats that the three passes over a row hand on to each other. */
    static final int ROOM = 7 * ROW;

    private final FrictionTable friction;
    private final float roughDrag;
    private final int[] links;
    /** What each link takes of momentum along the wall, on the two axes a and b along it. */
    private final float[] pushA;
    private final float[] pushB;
    /** Components of every direction along the wall. */
    private final float[] alongA = new float[VelocitySet.Q];
    private final float[] alongB = new float[VelocitySet.Q];

    FlatWallSweep(FrictionTable friction, WallShape wall) {
        this.friction = friction;
        roughDrag = (float) wall.roughDrag();
        links = wall.links();
        pushA = new float[links.length];
        pushB = new float[links.length];
        for (int i = 0; i < VelocitySet.Q; i++) {
            alongA[i] = VelocitySet.cx(i);
            alongB[i] = wall.normal()[2] == 0 ? VelocitySet.cz(i) : VelocitySet.cy(i);
        }
        for (int m = 0; m < links.length; m++) {
            float weight = -18 * (float) VelocitySet.weight(links[m]);
            pushA[m] = weight * alongA[links[m]];
            pushB[m] = weight * alongB[links[m]];
        }
    }

    @Override
    public boolean rows() {
        return true;
    }

    @Override
    public double work() {
        return 3;
    }

    @Override
    public void slide(float[] f, int[] base, int[] other, WallList cells, int from, int to, float[] room) {
        int at = cells.place(from);
        for (int i : links) {
            System.arraycopy(f, other[i] + at, f, base[i] + at, to - from);
        }
        momentum(f, base, at, to - from, room);
        rates(to - from, cells.stress(), from, room);
        push(f, base, at, to - from, room);
    }

    /** Speed, F and E of each cell. */
    private void momentum(float[] f, int[] b, int at, int length, float[] room) {
        for (int n = 0, x = at; n < length; n += SPECIES.length(), x += SPECIES.length()) {
            FloatVector density = fromArray(SPECIES, f, b[0] + x).add(1f);
            FloatVector freeA = FloatVector.zero(SPECIES);
            FloatVector freeB = FloatVector.zero(SPECIES);
            for (int i = 1; i < VelocitySet.Q; i += 2) {
                FloatVector plus = fromArray(SPECIES, f, b[i] + x);
                FloatVector minus = fromArray(SPECIES, f, b[i + 1] + x);
                FloatVector odd = plus.sub(minus);
                density = density.add(plus).add(minus);
                freeA = freeA.add(odd.mul(alongA[i]));
                freeB = freeB.add(odd.mul(alongB[i]));
            }
            FloatVector ea = FloatVector.zero(SPECIES);
            FloatVector eb = FloatVector.zero(SPECIES);
            for (int i : links) {
                FloatVector twice = fromArray(SPECIES, f, b[i] + x).mul(2f);
                ea = ea.add(twice.mul(alongA[i]));
                eb = eb.add(twice.mul(alongB[i]));
            }
            freeA = freeA.sub(ea);
            freeB = freeB.sub(eb);
            FloatVector along = freeA.mul(freeA).add(freeB.mul(freeB)).sqrt();
            along.intoArray(room, ALONG + n);
            along.div(density).intoArray(room, SPEED + n);
            freeA.intoArray(room, FREE_A + n);
            freeB.intoArray(room, FREE_B + n);
            ea.intoArray(room, E_A + n);
            eb.intoArray(room, E_B + n);
        }
    }

    private void rates(int length, float[] stress, int from, float[] room) {
        for (int n = 0; n < length; n++) {
            float rate = friction.rate(room[SPEED + n], roughDrag);
            stress[from + n] = rate * room[ALONG + n];
            room[RATE + n] = rate;
        }
    }

    /** Takes rate F + E off the cells of the row by way of the links. */
    private void push(float[] f, int[] b, int at, int length, float[] room) {
        int whole = SPECIES.loopBound(length);
        for (int n = 0, x = at; n < whole; n += SPECIES.length(), x += SPECIES.length()) {
            FloatVector rate = fromArray(SPECIES, room, RATE + n);
            FloatVector takenA = rate.mul(fromArray(SPECIES, room, FREE_A + n)).add(
                    fromArray(SPECIES, room, E_A + n));
            FloatVector takenB = rate.mul(fromArray(SPECIES, room, FREE_B + n)).add(
                    fromArray(SPECIES, room, E_B + n));
            for (int m = 0; m < links.length; m++) {
                int i = links[m];
                takenA.mul(pushA[m]).add(takenB.mul(pushB[m])).add(fromArray(SPECIES, f, b[i] + x))
                        .intoArray(f, b[i] + x);
            }
        }
        for (int n = whole; n < length; n++) {
            pushOne(f, b, at + n, room[RATE + n] * room[FREE_A + n] + room[E_A + n],
                    room[RATE + n] * room[FREE_B + n] + room[E_B + n]);
        }
    }

    private void pushOne(float[] f, int[] b, int x, float takenA, float takenB) {
        for (int m = 0; m < links.length; m++) {
            f[b[links[m]] + x] += takenA * pushA[m] + takenB * pushB[m];
        }
    }
}
