package slackwater.backend.cpu;

import static jdk.incubator.vector.FloatVector.fromArray;

import java.util.Arrays;
import jdk.incubator.vector.FloatVector;
import slackwater.lattice.VelocitySet;

/**
 * Bounce-back and the law of the wall on a row of cells beside a flat wall, a vector of cells at a time. There 6 sum of
 * w c c is a third along the wall, so s = 3 (F - E) and f_i += 18 w_i c_i.(F - E). Formulas as in {@link AnyWallSweep}.
 */
final class FlatWallSweep implements WallSweep {
    private static final int ROW = WallRoom.ROW;
    private static final int ALONG = 0;
    private static final int SPEED = ROW;
    private static final int FREE_A = 2 * ROW;
    private static final int FREE_B = 3 * ROW;
    private static final int E_A = 4 * ROW;
    private static final int E_B = 5 * ROW;
    private static final int RATE = 6 * ROW;
    /** Rows of a room that the passes over the cells hand on to each other. */
    static final int ROWS = 7;

    private final FrictionLanes friction;
    private final float[] roughDrag = new float[ROW];
    private final int[] links;
    /** What each link takes of momentum along the wall, on the two axes a and b along it. */
    private final float[] pushA;
    private final float[] pushB;
    /** Components of every direction along the wall. */
    private final float[] alongA = new float[VelocitySet.Q];
    private final float[] alongB = new float[VelocitySet.Q];

    FlatWallSweep(FrictionLanes friction, WallShape wall) {
        this.friction = friction;
        Arrays.fill(roughDrag, (float) wall.roughDrag());
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
        return 1.5;
    }

    @Override
    public void slide(float[] f, int[] base, int[] other, WallList cells, int from, int to, WallRoom room) {
        int at = cells.place(from);
        int length = to - from;
        float[] values = room.values;
        int[] back = room.bases;
        System.arraycopy(base, 0, back, 0, VelocitySet.Q);
        for (int i : links) {
            back[i] = other[i];
        }
        for (int n = 0; n < length; n += Lanes.COUNT) {
            momentum(f, back, at + n, values, n);
        }
        friction.rates(room, SPEED, RATE, roughDrag, 0, length);
        for (int n = 0; n < length; n += Lanes.COUNT) {
            taken(values, n);
        }
        System.arraycopy(values, ALONG, cells.stress(), from, length);
        for (int m = 0; m < links.length; m++) {
            push(f, other[links[m]] + at, base[links[m]] + at, m, length, values);
        }
    }

    /** Speed, F and E of a vector of cells. */
    private void momentum(float[] f, int[] b, int x, float[] room, int n) {
        FloatVector density = fromArray(Lanes.FLOATS, f, b[0] + x).add(1f);
        FloatVector freeA = FloatVector.zero(Lanes.FLOATS);
        FloatVector freeB = freeA;
        for (int i = 1; i < VelocitySet.Q; i += 2) {
            FloatVector plus = fromArray(Lanes.FLOATS, f, b[i] + x);
            FloatVector minus = fromArray(Lanes.FLOATS, f, b[i + 1] + x);
            FloatVector odd = plus.sub(minus);
            density = density.add(plus).add(minus);
            freeA = freeA.add(odd.mul(alongA[i]));
            freeB = freeB.add(odd.mul(alongB[i]));
        }
        FloatVector ea = FloatVector.zero(Lanes.FLOATS);
        FloatVector eb = ea;
        for (int i : links) {
            FloatVector twice = fromArray(Lanes.FLOATS, f, b[i] + x).mul(2f);
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

    /** rate F + E in place of F, and the stress in place of the momentum along the wall. */
    private static void taken(float[] room, int n) {
        FloatVector rate = fromArray(Lanes.FLOATS, room, RATE + n);
        rate.mul(fromArray(Lanes.FLOATS, room, ALONG + n)).intoArray(room, ALONG + n);
        rate.mul(fromArray(Lanes.FLOATS, room, FREE_A + n)).add(fromArray(Lanes.FLOATS, room, E_A + n))
                .intoArray(room, FREE_A + n);
        rate.mul(fromArray(Lanes.FLOATS, room, FREE_B + n)).add(fromArray(Lanes.FLOATS, room, E_B + n))
                .intoArray(room, FREE_B + n);
    }

    /**
     * Takes its share of rate F + E off what comes back by way of a link. The last vector may overlap the one before:
     * nothing is read from where it is written.
     *
     * @param left where the step before has left what comes back to the first cell
     * @param due where the next step looks for it
     */
    private void push(float[] f, int left, int due, int m, int length, float[] room) {
        int last = length - Lanes.COUNT;
        for (int n = 0; n < last; n += Lanes.COUNT) {
            pushVector(f, left, due, m, room, n);
        }
        if (last >= 0) {
            pushVector(f, left, due, m, room, last);
        } else {
            for (int n = 0; n < length; n++) {
                f[due + n] = room[FREE_A + n] * pushA[m] + room[FREE_B + n] * pushB[m] + f[left + n];
            }
        }
    }

    private void pushVector(float[] f, int left, int due, int m, float[] room, int n) {
        fromArray(Lanes.FLOATS, room, FREE_A + n).mul(pushA[m])
                .add(fromArray(Lanes.FLOATS, room, FREE_B + n).mul(pushB[m]))
                .add(fromArray(Lanes.FLOATS, f, left + n)).intoArray(f, due + n);
    }
}
