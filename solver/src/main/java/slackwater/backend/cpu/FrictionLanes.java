package slackwater.backend.cpu;

import static jdk.incubator.vector.FloatVector.fromArray;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.IntVector;
import jdk.incubator.vector.VectorOperators;

/** The friction of a run of cells: {@link FrictionTable} by vectors, with the same bits. */
final class FrictionLanes {
    private final FrictionTable table;

    FrictionLanes(FrictionTable table) {
        this.table = table;
    }

    /**
     * Writes u_tau^2/|u| of a run of cells into a room; past its end, up to a whole vector, what follows is lost.
     *
     * @param speed where in the room their |u| begin
     * @param rate where their rates are to begin
     * @param roughDrag of the wall at each cell, from an index on
     */
    void rates(WallRoom room, int speed, int rate, float[] roughDrag, int from, int length) {
        for (int n = 0; n < length; n += Lanes.COUNT) {
            look(room, speed, n);
        }
        float[] amplification = table.amplification;
        for (int n = 0; n < length; n++) {
            int step = room.steps[n];
            room.low[n] = amplification[step];
            room.high[n] = amplification[step + 1];
        }
        for (int n = 0; n < length; n += Lanes.COUNT) {
            read(room, speed, rate, roughDrag, from, n);
        }
    }

    /** The step of the table that each speed is on, and how far along it. */
    private void look(WallRoom room, int speed, int n) {
        IntVector inside = fromArray(Lanes.FLOATS, room.values, speed + n).mul(table.perSpeed).reinterpretAsInts()
                .sub(FrictionTable.LOWEST).max(0).min(FrictionTable.HIGHEST - FrictionTable.LOWEST);
        IntVector step = inside.lanewise(VectorOperators.ASHR, FrictionTable.STEP_BITS);
        step.intoArray(room.steps, n);
        FloatVector part = (FloatVector) inside.sub(step.lanewise(VectorOperators.LSHL, FrictionTable.STEP_BITS))
                .convert(VectorOperators.I2F, 0);
        part.mul(FrictionTable.PER_STEP).intoArray(room.part, n);
    }

    private void read(WallRoom room, int speed, int rate, float[] roughDrag, int from, int n) {
        FloatVector low = fromArray(Lanes.FLOATS, room.low, n);
        FloatVector rise = fromArray(Lanes.FLOATS, room.high, n).sub(low);
        FloatVector rough = fromArray(Lanes.FLOATS, roughDrag, from + n)
                .mul(fromArray(Lanes.FLOATS, room.values, speed + n));
        low.add(fromArray(Lanes.FLOATS, room.part, n).mul(rise)).mul(table.laminar).max(rough)
                .intoArray(room.values, rate + n);
    }
}
