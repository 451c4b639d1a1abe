package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slackwater.lattice.LatticeProblem;

/**
 * The stretches of the array that are swept. Scattered solid cells are swept like water (what they hold is never read
 * by a fluid cell: links overwrite it first); longer solid stretches are left out. Stretches are brought together, and
 * long ones cut, into blocks so that threads share them evenly, always at the same places whatever the number of
 * threads.
 */
final class Spans {
    private static final int LEAST_BLOCK = 512;
    private static final int MOST_BLOCK = 2048;
    /** A small tank still has so many blocks for threads to share. */
    private static final int BLOCKS = 64;
    /** Stretches are cut at multiples of this: whole vectors. */
    private static final int CUT = 64;
    /** Solid stretches at least this long are left out: no shorter than any vector, so that a sweep may run over. */
    static final int GAP = 16;

    /** Cells past the end of a stretch that its last vector may still touch. */
    private static final int OVERRUN = GAP - 1;

    /** Where stretches begin and end, in the order of memory. */
    private final int[] from;
    private final int[] to;
    /** First stretch of each block, and past the last one. */
    private final int[] first;
    /** Where each block begins. */
    private final int[] start;

    Spans(LatticeProblem problem, Layout layout) {
        int length = blockLength(problem.cells());
        List<int[]> stretches = new ArrayList<>();
        List<Integer> blocks = new ArrayList<>();
        int[] open = {-GAP, -GAP};
        int sweptBefore = length;
        for (int k = 0; k < problem.nz(); k++) {
            for (int j = 0; j < problem.ny(); j++) {
                for (int i = 0; i < problem.nx(); i++) {
                    if (problem.solid()[problem.index(i, j, k)]) {
                        continue;
                    }
                    int cell = layout.cell(i, j, k);
                    int behind = cell - open[0];
                    if (cell - open[1] >= GAP || sweptBefore + behind >= length && behind % CUT == 0) {
                        sweptBefore += open[1] - open[0];
                        if (sweptBefore >= length) {
                            blocks.add(stretches.size());
                            sweptBefore = 0;
                        }
                        open = new int[] {cell, cell};
                        stretches.add(open);
                    }
                    open[1] = cell + 1;
                }
            }
        }
        from = stretches.stream().mapToInt(stretch -> stretch[0]).toArray();
        to = stretches.stream().mapToInt(stretch -> stretch[1]).toArray();
        start = blocks.stream().mapToInt(stretch -> from[stretch]).toArray();
        blocks.add(stretches.size());
        first = blocks.stream().mapToInt(stretch -> stretch).toArray();
    }

    private static int blockLength(int cells) {
        int even = cells / BLOCKS / CUT * CUT;
        return Math.max(LEAST_BLOCK, Math.min(MOST_BLOCK, even));
    }

    /** How many blocks there are. */
    int count() {
        return start.length;
    }

    /** The first cell of a block. */
    int from(int block) {
        return start[block];
    }

    /** Past the last cell of a block. */
    int to(int block) {
        return to[first[block + 1] - 1];
    }

    /** Past the last cell that the sweep of a block may touch. */
    int end(int block) {
        return to(block) + OVERRUN;
    }

    /** Cells that the sweep of a block is for, rock between them included. */
    int cells(int block) {
        int cells = 0;
        for (int stretch = first[block]; stretch < first[block + 1]; stretch++) {
            cells += to[stretch] - from[stretch];
        }
        return cells;
    }

    /** Sweeps a block. Parameters as in {@link Sweep#collide}. */
    void collide(Sweep sweep, float[] f, int[] base, int block) {
        for (int stretch = first[block]; stretch < first[block + 1]; stretch++) {
            sweep.collide(f, base, from[stretch], to[stretch]);
        }
    }

    /** The block that a swept cell belongs to. */
    int blockOf(int place) {
        return lastBefore(place + 1);
    }

    /** The first block whose sweep may touch cells from a place on. */
    int firstReaching(int place) {
        int block = Math.max(0, lastBefore(place));
        return end(block) > place ? block : Math.min(block + 1, start.length - 1);
    }

    /** The last block that begins before a place; below 0 if there is none. */
    int lastBefore(int place) {
        int found = Arrays.binarySearch(start, place);
        return (found >= 0 ? found : -found - 1) - 1;
    }
}
