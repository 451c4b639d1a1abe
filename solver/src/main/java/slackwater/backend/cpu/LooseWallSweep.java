package slackwater.backend.cpu;

import static jdk.incubator.vector.FloatVector.fromArray;

import java.util.List;
import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.IntVector;
import jdk.incubator.vector.VectorOperators;
import slackwater.lattice.VelocitySet;

/**
 * Bounce-back and the law of the wall at rock, edges and wherever cells do not lie in rows. Cells that touch walls each
 * in their own way are brought into the thread's room and treated there a vector at a time; what comes from the wall is
 * brought back. Single loads and stores are what costs. Formulas as in {@link AnyWallSweep}, in single precision: where
 * a normal is slanted, rounding lets a little mass through, 2e-8 of the water a minute in a tank with two mounds.
 */
final class LooseWallSweep implements WallSweep {
    private static final int LAST = VelocitySet.Q - 1;
    private static final int ROW = WallRoom.ROW;

    /** Where the room holds what, a row each: populations, then what the passes over them hand on to each other. */
    private static final int ALONG = VelocitySet.Q * ROW;
    private static final int SPEED = ALONG + ROW;
    private static final int RATE = SPEED + ROW;
    private static final int FREE = RATE + ROW;
    private static final int TURNED = FREE + 3 * ROW;
    private static final int SLIP = TURNED + 3 * ROW;
    static final int ROWS = SLIP / ROW + 3;

    /** 6 w_i c_i. */
    private static final float[] PUSH_X = new float[VelocitySet.Q];
    private static final float[] PUSH_Y = new float[VelocitySet.Q];
    private static final float[] PUSH_Z = new float[VelocitySet.Q];

    static {
        for (int i = 0; i < VelocitySet.Q; i++) {
            float weight = 6 * (float) VelocitySet.weight(i);
            PUSH_X[i] = weight * VelocitySet.cx(i);
            PUSH_Y[i] = weight * VelocitySet.cy(i);
            PUSH_Z[i] = weight * VelocitySet.cz(i);
        }
    }

    private final FrictionLanes friction;
    /** How each cell of the list touches walls, as in {@link WallShape}. */
    private final int[] links;
    private final float[][] normal;
    private final float[][] inverse;
    private final float[] area;
    private final float[] roughDrag;

    /**
     * @param cells all that there are, in their order for good
     * @param kinds the kinds of wall, by number
     */
    LooseWallSweep(FrictionLanes friction, WallList cells, List<WallShape> kinds) {
        this.friction = friction;
        int length = cells.count() + Lanes.COUNT;
        links = new int[length];
        normal = new float[3][length];
        inverse = new float[6][length];
        area = new float[length];
        roughDrag = new float[length];
        for (int n = 0; n < cells.count(); n++) {
            WallShape wall = kinds.get(cells.kind(n));
            links[n] = wall.bits();
            area[n] = (float) wall.area();
            roughDrag[n] = (float) wall.roughDrag();
            for (int m = 0; m < normal.length; m++) {
                normal[m][n] = (float) wall.normal()[m];
            }
            for (int m = 0; m < inverse.length; m++) {
                inverse[m][n] = (float) wall.inverse()[m];
            }
        }
    }

    @Override
    public boolean rows() {
        return false;
    }

    @Override
    public double work() {
        return 7;
    }

    @Override
    public void slide(float[] f, int[] base, int[] other, WallList cells, int from, int to, WallRoom room) {
        int length = to - from;
        float[] values = room.values;
        int gathered = Lanes.gathered(length);
        for (int n = 0; n < gathered; n += Lanes.COUNT) {
            gather(f, base, other, cells, from + n, room, n);
        }
        for (int n = gathered; n < length; n++) {
            bring(f, base, other, cells, from + n, values, n);
        }
        for (int n = 0; n < length; n += Lanes.COUNT) {
            momentum(values, n, from + n);
        }
        friction.rates(room, SPEED, RATE, roughDrag, from, length);
        for (int n = 0; n < length; n += Lanes.COUNT) {
            slip(values, n, from + n);
            push(values, n, from + n);
        }
        System.arraycopy(values, ALONG, cells.stress(), from, length);
        int scattered = Lanes.scattered(length);
        for (int n = 0; n < scattered; n += Lanes.COUNT) {
            scatter(f, base, cells, from + n, values, n);
        }
        for (int n = scattered; n < length; n++) {
            putBack(f, base, cells, from + n, values, n);
        }
    }

    /** Brings the populations of a vector of cells together, those from walls bounced back. */
    private static void gather(float[] f, int[] base, int[] other, WallList cells, int cell, WallRoom room, int n) {
        IntVector turned = IntVector.fromArray(Lanes.INTS, cells.turned(), cell);
        int turnedByAny = turned.reduceLanes(VectorOperators.OR);
        for (int i = 0; i < VelocitySet.Q; i++) {
            if ((turnedByAny >> i & 1) == 0) {
                fromArray(Lanes.FLOATS, f, base[i], cells.places(), cell).intoArray(room.values, i * ROW + n);
            } else {
                turned.lanewise(VectorOperators.LSHR, i).and(1).mul(other[i] - base[i])
                        .add(IntVector.fromArray(Lanes.INTS, cells.places(), cell)).intoArray(room.places, 0);
                fromArray(Lanes.FLOATS, f, base[i], room.places, 0).intoArray(room.values, i * ROW + n);
            }
        }
    }

    /** Puts back what came from the walls of any of these cells; what of the others is written with it has stayed. */
    private static void scatter(float[] f, int[] base, WallList cells, int cell, float[] room, int n) {
        int turnedByAny = IntVector.fromArray(Lanes.INTS, cells.turned(), cell).reduceLanes(VectorOperators.OR);
        for (int turned = turnedByAny; turned != 0; turned &= turned - 1) {
            int i = Integer.numberOfTrailingZeros(turned);
            fromArray(Lanes.FLOATS, room, i * ROW + n).intoArray(f, base[i], cells.places(), cell);
        }
    }

    /** Brings the populations of one cell together, those from walls bounced back. */
    private static void bring(float[] f, int[] base, int[] other, WallList cells, int cell, float[] room, int n) {
        int at = cells.places()[cell];
        for (int i = 0; i < VelocitySet.Q; i++) {
            room[i * ROW + n] = f[base[i] + at];
        }
        for (int turned = cells.turned()[cell]; turned != 0; turned &= turned - 1) {
            int i = Integer.numberOfTrailingZeros(turned);
            room[i * ROW + n] = f[other[i] + at];
        }
    }

    /** Puts back what came to one cell from walls. */
    private static void putBack(float[] f, int[] base, WallList cells, int cell, float[] room, int n) {
        int at = cells.places()[cell];
        for (int turned = cells.turned()[cell]; turned != 0; turned &= turned - 1) {
            int i = Integer.numberOfTrailingZeros(turned);
            f[base[i] + at] = room[i * ROW + n];
        }
    }

    /** Speed, what momentum along the wall there would be without it, and what the links have turned round. */
    private void momentum(float[] room, int n, int cell) {
        IntVector turning = IntVector.fromArray(Lanes.INTS, links, cell);
        FloatVector density = fromArray(Lanes.FLOATS, room, n).add(1f);
        FloatVector ex = FloatVector.zero(Lanes.FLOATS);
        FloatVector ey = ex;
        FloatVector ez = ex;
        FloatVector x = ex;
        FloatVector y = ex;
        FloatVector z = ex;
        for (int i = 1; i < LAST; i += 2) {
            FloatVector plus = fromArray(Lanes.FLOATS, room, i * ROW + n);
            FloatVector minus = fromArray(Lanes.FLOATS, room, (i + 1) * ROW + n);
            density = density.add(plus).add(minus);
            FloatVector odd = plus.sub(minus);
            FloatVector turned = plus.mul(link(turning, i)).sub(minus.mul(link(turning, i + 1)));
            x = x.add(odd.mul(VelocitySet.cx(i)));
            y = y.add(odd.mul(VelocitySet.cy(i)));
            z = z.add(odd.mul(VelocitySet.cz(i)));
            ex = ex.add(turned.mul(2f * VelocitySet.cx(i)));
            ey = ey.add(turned.mul(2f * VelocitySet.cy(i)));
            ez = ez.add(turned.mul(2f * VelocitySet.cz(i)));
        }
        x = x.sub(ex);
        y = y.sub(ey);
        z = z.sub(ez);
        FloatVector nx = fromArray(Lanes.FLOATS, normal[0], cell);
        FloatVector ny = fromArray(Lanes.FLOATS, normal[1], cell);
        FloatVector nz = fromArray(Lanes.FLOATS, normal[2], cell);
        FloatVector through = x.mul(nx).add(y.mul(ny)).add(z.mul(nz));
        x = x.sub(through.mul(nx));
        y = y.sub(through.mul(ny));
        z = z.sub(through.mul(nz));
        FloatVector along = x.mul(x).add(y.mul(y)).add(z.mul(z)).sqrt();
        along.intoArray(room, ALONG + n);
        along.div(density).intoArray(room, SPEED + n);
        x.intoArray(room, FREE + n);
        y.intoArray(room, FREE + ROW + n);
        z.intoArray(room, FREE + 2 * ROW + n);
        ex.intoArray(room, TURNED + n);
        ey.intoArray(room, TURNED + ROW + n);
        ez.intoArray(room, TURNED + 2 * ROW + n);
    }

    /** The slip s that takes rate F + E off by way of the links; the stress in place of the momentum along the wall. */
    private void slip(float[] room, int n, int cell) {
        FloatVector rate = fromArray(Lanes.FLOATS, room, RATE + n);
        rate.mul(fromArray(Lanes.FLOATS, room, ALONG + n)).intoArray(room, ALONG + n);
        FloatVector taken = rate.mul(fromArray(Lanes.FLOATS, area, cell)).neg();
        FloatVector x = taken.mul(fromArray(Lanes.FLOATS, room, FREE + n))
                .sub(fromArray(Lanes.FLOATS, room, TURNED + n));
        FloatVector y = taken.mul(fromArray(Lanes.FLOATS, room, FREE + ROW + n))
                .sub(fromArray(Lanes.FLOATS, room, TURNED + ROW + n));
        FloatVector z = taken.mul(fromArray(Lanes.FLOATS, room, FREE + 2 * ROW + n))
                .sub(fromArray(Lanes.FLOATS, room, TURNED + 2 * ROW + n));
        FloatVector xx = fromArray(Lanes.FLOATS, inverse[0], cell);
        FloatVector yy = fromArray(Lanes.FLOATS, inverse[1], cell);
        FloatVector zz = fromArray(Lanes.FLOATS, inverse[2], cell);
        FloatVector xy = fromArray(Lanes.FLOATS, inverse[3], cell);
        FloatVector xz = fromArray(Lanes.FLOATS, inverse[4], cell);
        FloatVector yz = fromArray(Lanes.FLOATS, inverse[5], cell);
        xx.mul(x).add(xy.mul(y)).add(xz.mul(z)).intoArray(room, SLIP + n);
        xy.mul(x).add(yy.mul(y)).add(yz.mul(z)).intoArray(room, SLIP + ROW + n);
        xz.mul(x).add(yz.mul(y)).add(zz.mul(z)).intoArray(room, SLIP + 2 * ROW + n);
    }

    /** Gives every population that arrives from the wall its share: 6 w_i c_i.s. */
    private void push(float[] room, int n, int cell) {
        IntVector turning = IntVector.fromArray(Lanes.INTS, links, cell);
        FloatVector x = fromArray(Lanes.FLOATS, room, SLIP + n);
        FloatVector y = fromArray(Lanes.FLOATS, room, SLIP + ROW + n);
        FloatVector z = fromArray(Lanes.FLOATS, room, SLIP + 2 * ROW + n);
        for (int i = 1; i < LAST; i += 2) {
            FloatVector change = x.mul(PUSH_X[i]).add(y.mul(PUSH_Y[i])).add(z.mul(PUSH_Z[i]));
            fromArray(Lanes.FLOATS, room, i * ROW + n).add(change.mul(link(turning, i))).intoArray(room, i * ROW + n);
            fromArray(Lanes.FLOATS, room, (i + 1) * ROW + n).sub(change.mul(link(turning, i + 1)))
                    .intoArray(room, (i + 1) * ROW + n);
        }
    }

    /** 1 where a direction arrives from the wall, else 0. */
    private static FloatVector link(IntVector links, int direction) {
        return (FloatVector) links.lanewise(VectorOperators.LSHR, direction).and(1)
                .convert(VectorOperators.I2F, 0);
    }
}
