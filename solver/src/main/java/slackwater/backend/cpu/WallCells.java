package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import slackwater.lattice.WallFriction;

/**
 * The cells that touch a wall of the law of the wall, in the order of memory, and their treatment: after the links have
 * bounced their populations back, the momentum along the wall that this took is given back and the friction of the law
 * is taken instead. No cell touches another's populations. Doing links and walls twice is as good as once, since the
 * links begin anew from populations that this leaves alone. Source: [Asmuth2021]; docs/numerics.md.
 */
final class WallCells {
    /** Rows are cut at this many cells, so that threads share them evenly: whole vectors of any machine. */
    static final int LONGEST_ROW = 64;

    private final FrictionTable friction;
    private final Map<List<Number>, OptionalInt> numbers = new HashMap<>();
    private final List<WallSweep> sweepList = new ArrayList<>();
    private WallSweep[] sweeps = new WallSweep[0];
    private int[] cell = new int[256];
    private float[] stress = new float[256];
    private int count;
    private int[] rowStart = new int[257];
    private int[] rowHome = new int[256];
    private int[] rowKind = new int[256];
    private int rows;
    private final Spans spans;
    /** First row of each block, up to the block of the last cell. */
    private final int[] firstRow;
    private int block;

    /** @param spans the blocks of the sweep: a row ends where one does */
    WallCells(WallFriction law, Spans spans) {
        friction = new FrictionTable(law);
        this.spans = spans;
        firstRow = new int[spans.count()];
    }

    /**
     * Adds a cell; cells come in the order of memory.
     *
     * @param index in the problem
     * @param at in the array, as in the layout
     * @param links the directions that arrive from walls of the law, as bits
     * @param roughDrag of the roughest of these walls
     */
    void add(int index, int at, int links, double roughDrag) {
        OptionalInt number = numbers.computeIfAbsent(List.of(links, roughDrag), key -> kind(links, roughDrag));
        if (number.isEmpty()) {
            return;
        }
        if (count == cell.length) {
            cell = Arrays.copyOf(cell, 2 * count);
            stress = Arrays.copyOf(stress, 2 * count);
        }
        cell[count] = index;
        boolean cut = enter(at);
        extend(at, number.getAsInt(), cut);
        count++;
        rowStart[rows] = count;
    }

    /** Goes on to the block of a cell; true if that is another one. */
    private boolean enter(int at) {
        int before = block;
        while (at >= spans.to(block)) {
            firstRow[++block] = rows;
        }
        return block > before;
    }

    /** The number of this kind of wall; empty if plain bounce-back is to stay. */
    private OptionalInt kind(int links, double roughDrag) {
        WallShape wall = WallShape.of(links, roughDrag);
        if (!wall.slides()) {
            return OptionalInt.empty();
        }
        sweepList.add(wall.flatAlongX() ? new FlatWallSweep(friction, wall) : new AnyWallSweep(friction, wall));
        sweeps = sweepList.toArray(WallSweep[]::new);
        return OptionalInt.of(sweeps.length - 1);
    }

    /** Lengthens the last row by a cell or begins a new one. */
    private void extend(int at, int kind, boolean cut) {
        int length = rows == 0 || cut ? 0 : count - rowStart[rows - 1];
        if (length > 0 && length < LONGEST_ROW && kind == rowKind[rows - 1] && at == rowHome[rows - 1] + length) {
            return;
        }
        if (rows == rowHome.length) {
            rowStart = Arrays.copyOf(rowStart, 2 * rows + 1);
            rowHome = Arrays.copyOf(rowHome, 2 * rows);
            rowKind = Arrays.copyOf(rowKind, 2 * rows);
        }
        rowStart[rows] = count;
        rowHome[rows] = at;
        rowKind[rows++] = kind;
    }

    /** The first row in a block of the sweep or in any that follows. */
    int firstRow(int block) {
        return block > this.block ? rows : firstRow[block];
    }

    int rows() {
        return rows;
    }

    /** No stress, as before the first step. */
    void clear() {
        Arrays.fill(stress, 0);
    }

    /** Writes rho u_tau^2 of each of its cells, x fastest. */
    void readStress(float[] target) {
        for (int n = 0; n < count; n++) {
            target[cell[n]] = stress[n];
        }
    }

    /** Treats the rows [from, to); after the links. Parameters as in {@link WallSweep#slide}. */
    void apply(float[] f, int[] base, int from, int to, float[] room) {
        for (int n = from; n < to; n++) {
            sweeps[rowKind[n]].slide(f, base, rowHome[n], rowStart[n + 1] - rowStart[n], stress, rowStart[n], room);
        }
    }
}
