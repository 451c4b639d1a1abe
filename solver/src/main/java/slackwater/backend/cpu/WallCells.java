package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import slackwater.lattice.WallFriction;

/**
 * The cells that touch a wall of the law of the wall, block by block of the sweep, and their treatment: after the links
 * have bounced their populations back, the momentum along the wall that this took is given back and the friction of the
 * law is taken instead. No cell touches another's populations, so their order does not matter; within a block, cells of
 * one kind that lie in a row are treated together. Doing links and walls twice is as good as once, since the links
 * begin anew from populations that this leaves alone. Source: [Asmuth2021]; docs/numerics.md.
 */
final class WallCells {
    /** Rows are no longer than this many cells: whole vectors of any machine. */
    static final int LONGEST_ROW = 64;

    private final FrictionTable friction;
    private final Spans spans;
    private final int pitch;
    private final boolean vectors;
    private final Map<List<Number>, OptionalInt> numbers = new HashMap<>();
    private final List<WallSweep> kinds = new ArrayList<>();
    private WallSweep[] sweeps = new WallSweep[0];
    private int[] cell = new int[256];
    private int[] place = new int[256];
    private int[] kind = new int[256];
    private int count;
    private float[] stress = new float[0];
    private final int[] firstRow;
    private int[] rowStart = new int[0];
    private int rows;

    /**
     * @param spans the blocks of the sweep
     * @param pitch distance in the array from a cell to its neighbour along y
     * @param vectors whether the Java machine has its vector module
     */
    WallCells(WallFriction law, Spans spans, int pitch, boolean vectors) {
        friction = new FrictionTable(law);
        this.spans = spans;
        this.pitch = pitch;
        this.vectors = vectors;
        firstRow = new int[spans.count() + 1];
    }

    /** Room for what a thread keeps while it treats a row. */
    static float[] room(boolean vectors) {
        return vectors ? FlatWallSweep.room() : new float[0];
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
            place = Arrays.copyOf(place, 2 * count);
            kind = Arrays.copyOf(kind, 2 * count);
        }
        cell[count] = index;
        place[count] = at;
        kind[count++] = number.getAsInt();
    }

    /** The number of this kind of wall; empty if plain bounce-back is to stay. */
    private OptionalInt kind(int links, double roughDrag) {
        WallShape wall = WallShape.of(links, roughDrag);
        if (!wall.slides()) {
            return OptionalInt.empty();
        }
        kinds.add(wall.flat() && vectors ? new FlatWallSweep(friction, wall, wall.acrossX() ? pitch : 1)
                : new AnyWallSweep(friction, wall));
        return OptionalInt.of(kinds.size() - 1);
    }

    /** Ends the adding, before the first step: brings the cells of each block into rows. */
    void pack() {
        sweeps = kinds.toArray(WallSweep[]::new);
        stress = new float[count];
        rowStart = new int[count + 1];
        for (int block = 0, from = 0; block < spans.count(); block++) {
            int to = from;
            while (to < count && place[to] < spans.to(block)) {
                to++;
            }
            sort(from, to);
            firstRow[block] = rows;
            for (int n = from; n < to; n++) {
                if (n == from || !continues(n)) {
                    rowStart[rows++] = n;
                }
            }
            from = to;
        }
        firstRow[spans.count()] = rows;
        rowStart[rows] = count;
        rowStart = Arrays.copyOf(rowStart, rows + 1);
    }

    /** Brings cells of one kind together, in the order of memory. */
    private void sort(int from, int to) {
        long[] keys = new long[to - from];
        for (int n = from; n < to; n++) {
            keys[n - from] = (long) kind[n] << Integer.SIZE | n;
        }
        Arrays.sort(keys);
        int[] oldCell = Arrays.copyOfRange(cell, from, to);
        int[] oldPlace = Arrays.copyOfRange(place, from, to);
        for (int n = from; n < to; n++) {
            int old = (int) keys[n - from] - from;
            cell[n] = oldCell[old];
            place[n] = oldPlace[old];
            kind[n] = (int) (keys[n - from] >>> Integer.SIZE);
        }
    }

    private boolean continues(int n) {
        return kind[n] == kind[n - 1] && place[n] == place[n - 1] + sweeps[kind[n]].step()
                && n - rowStart[rows - 1] < LONGEST_ROW;
    }

    /** Work for the cells of a block, in sweeps of a cell. */
    double work(int block) {
        double work = 0;
        for (int n = rowStart[firstRow[block]]; n < rowStart[firstRow[block + 1]]; n++) {
            work += sweeps[kind[n]].work();
        }
        return work;
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

    /** Treats the cells in the blocks [first, end); after their links. Parameters as in {@link WallSweep#slide}. */
    void apply(float[] f, int[] base, int first, int end, float[] room) {
        for (int row = firstRow[first]; row < firstRow[end]; row++) {
            int n = rowStart[row];
            sweeps[kind[n]].slide(f, base, place[n], rowStart[row + 1] - n, stress, n, room);
        }
    }
}
