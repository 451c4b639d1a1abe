package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import slackwater.lattice.WallFriction;

/**
 * The cells that touch a wall of the law of the wall, block by block of the sweep, and their treatment: what comes from
 * the wall is bounced back, the momentum along the wall that this took is given back and the friction of the law is
 * taken instead. No cell touches another's populations, so their order does not matter; within a block, those that can
 * be are treated together. Source: [Asmuth2021]; docs/numerics.md.
 */
final class WallCells {
    private final FrictionTable friction;
    private final Spans spans;
    private final boolean vectors;
    private final Map<List<Number>, OptionalInt> numbers = new HashMap<>();
    private final List<WallShape> kinds = new ArrayList<>();
    /** Whether cells of each kind can be treated in rows. */
    private final List<Boolean> inRows = new ArrayList<>();
    private final WallList cells = new WallList();
    private final List<WallSweep> sweeps = new ArrayList<>();
    /** What treats each kind of wall. */
    private int[] treatment = new int[0];
    private final int[] firstRun;
    private int[] runStart = new int[0];
    private WallSweep[] runSweep = new WallSweep[0];
    private int runs;

    /**
     * @param spans the blocks of the sweep
     * @param vectors whether the Java machine has its vector module
     */
    WallCells(WallFriction law, Spans spans, boolean vectors) {
        friction = new FrictionTable(law);
        this.spans = spans;
        this.vectors = vectors;
        firstRun = new int[spans.count() + 1];
    }

    /** Room for what a thread keeps while it treats cells. */
    static WallRoom room(boolean vectors) {
        return new WallRoom(vectors ? Math.max(FlatWallSweep.ROWS, LooseWallSweep.ROWS) : 0);
    }

    /**
     * Adds a cell, unless the law has no hold on it and it is to be bounced back and no more; cells come in the order
     * of memory.
     *
     * @param index in the problem
     * @param at in the array, as in the layout
     * @param turned the directions in which the cell gets back what it sent out, as bits
     * @param links those of them that arrive from walls of the law
     * @param roughDrag of the roughest of these walls
     * @return whether it was added
     */
    boolean add(int index, int at, int turned, int links, double roughDrag) {
        boolean plain = turned != links;
        OptionalInt kind = numbers.computeIfAbsent(List.of(links, roughDrag, plain ? 1 : 0),
                key -> kind(links, roughDrag, plain));
        kind.ifPresent(number -> cells.add(index, at, number, turned));
        return kind.isPresent();
    }

    /** The number of this kind of wall; empty if plain bounce-back is to stay. */
    private OptionalInt kind(int links, double roughDrag, boolean plain) {
        WallShape wall = WallShape.of(links, roughDrag);
        if (!wall.slides()) {
            return OptionalInt.empty();
        }
        kinds.add(wall);
        inRows.add(wall.flat() && !wall.acrossX() && !plain);
        return OptionalInt.of(kinds.size() - 1);
    }

    /** Ends the adding, before the first step: brings the cells of each block into runs of what treats them. */
    void pack() {
        cells.close();
        int[] end = new int[spans.count()];
        for (int block = 0, n = 0; block < end.length; block++) {
            while (n < cells.count() && cells.place(n) < spans.to(block)) {
                n++;
            }
            end[block] = n;
        }
        treatment = treatments();
        for (int block = 0, from = 0; block < end.length; from = end[block++]) {
            cells.sort(from, end[block], treatment);
        }
        if (vectors) {
            sweeps.add(new LooseWallSweep(new FrictionLanes(friction), cells, kinds));
        }
        runStart = new int[cells.count() + 1];
        for (int block = 0, n = 0; block < end.length; block++) {
            firstRun[block] = runs;
            for (int first = n; n < end[block]; n++) {
                if (n == first || !continues(n)) {
                    runStart[runs++] = n;
                }
            }
        }
        firstRun[end.length] = runs;
        runStart[runs] = cells.count();
        runSweep = new WallSweep[runs];
        Arrays.setAll(runSweep, run -> sweep(runStart[run]));
    }

    /**
     * Number of the sweep that treats each kind of wall: flat ones whose cells lie in rows have a sweep each, all
     * others share the last one; without vectors each kind has its own.
     */
    private int[] treatments() {
        List<Integer> loose = new ArrayList<>();
        int[] numbers = new int[kinds.size()];
        for (int kind = 0; kind < numbers.length; kind++) {
            WallShape wall = kinds.get(kind);
            numbers[kind] = sweeps.size();
            if (!vectors) {
                sweeps.add(new AnyWallSweep(friction, wall));
            } else if (inRows.get(kind)) {
                sweeps.add(new FlatWallSweep(new FrictionLanes(friction), wall));
            } else {
                loose.add(kind);
            }
        }
        loose.forEach(kind -> numbers[kind] = sweeps.size());
        return numbers;
    }

    private WallSweep sweep(int n) {
        return sweeps.get(treatment[cells.kind(n)]);
    }

    private boolean continues(int n) {
        return sweep(n) == sweep(n - 1) && n - runStart[runs - 1] < WallRoom.LONGEST_RUN
                && (!sweep(n).rows() || cells.place(n) == cells.place(n - 1) + 1);
    }

    /** Work for the cells of a block, in sweeps of a cell. */
    double work(int block) {
        double work = 0;
        for (int n = runStart[firstRun[block]]; n < runStart[firstRun[block + 1]]; n++) {
            work += sweep(n).work();
        }
        return work;
    }

    /** No stress, as before the first step. */
    void clear() {
        cells.clear();
    }

    /** Writes rho u_tau^2 of each of its cells, x fastest. */
    void readStress(float[] target) {
        cells.readStress(target);
    }

    /** Treats the cells of a block, when all else has been streamed. Parameters as in {@link WallSweep#slide}. */
    void apply(float[] f, int[] base, int[] other, int block, WallRoom room) {
        for (int run = firstRun[block]; run < firstRun[block + 1]; run++) {
            runSweep[run].slide(f, base, other, cells, runStart[run], runStart[run + 1], room);
        }
    }
}
