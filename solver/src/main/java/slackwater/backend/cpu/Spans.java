package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slackwater.lattice.LatticeProblem;

/**
 * The stretches of the array that are swept. Scattered solid cells are swept like water (what they hold is never read
 * by a fluid cell: links overwrite it first); long solid stretches are left out. Stretches are cut into blocks so that
 * threads share them evenly, always at the same places whatever the number of threads.
 */
final class Spans {
    private static final int LEAST_BLOCK = 512;
    private static final int MOST_BLOCK = 2048;
    /** A small tank still has so many blocks for threads to share. */
    private static final int BLOCKS = 64;
    /** Solid stretches at least this long are left out; no shorter than a vector, so that a sweep may run over. */
    private static final int GAP = 64;

    /** Cells past the end of a block that the last vector of any machine may still touch. */
    private static final int OVERRUN = GAP - 1;

    private final int[] from;
    private final int[] to;

    Spans(LatticeProblem problem, Layout layout) {
        int length = blockLength(problem.cells());
        List<int[]> blocks = new ArrayList<>();
        int start = -1;
        int end = -1;
        for (int k = 0; k < problem.nz(); k++) {
            for (int j = 0; j < problem.ny(); j++) {
                for (int i = 0; i < problem.nx(); i++) {
                    if (problem.solid()[problem.index(i, j, k)]) {
                        continue;
                    }
                    int cell = layout.cell(i, j, k);
                    if (start >= 0 && (cell - end >= GAP || cell - start >= length && (cell - start) % length == 0)) {
                        blocks.add(new int[] {start, end});
                        start = -1;
                    }
                    start = start < 0 ? cell : start;
                    end = cell + 1;
                }
            }
        }
        if (start >= 0) {
            blocks.add(new int[] {start, end});
        }
        from = blocks.stream().mapToInt(block -> block[0]).toArray();
        to = blocks.stream().mapToInt(block -> block[1]).toArray();
    }

    private static int blockLength(int cells) {
        int even = cells / BLOCKS / GAP * GAP;
        return Math.max(LEAST_BLOCK, Math.min(MOST_BLOCK, even));
    }

    int count() {
        return from.length;
    }

    int from(int block) {
        return from[block];
    }

    int to(int block) {
        return to[block];
    }

    /** Past the last cell that the sweep of a block may touch. */
    int end(int block) {
        return to[block] + OVERRUN;
    }

    /** The block that a swept cell belongs to. */
    int blockOf(int place) {
        return lastBefore(place + 1);
    }

    /** The first block whose sweep may touch cells from a place on. */
    int firstReaching(int place) {
        int block = Math.max(0, lastBefore(place));
        return end(block) > place ? block : Math.min(block + 1, from.length - 1);
    }

    /** The last block that begins before a place; below 0 if there is none. */
    int lastBefore(int place) {
        int found = Arrays.binarySearch(from, place);
        return (found >= 0 ? found : -found - 1) - 1;
    }
}
