package slackwater.backend.cpu;

import java.util.ArrayList;
import java.util.List;
import slackwater.lattice.LatticeProblem;

/**
 * The stretches of the array that are swept. Scattered solid cells are swept like water (what they hold is never read
 * by a fluid cell: links overwrite it first); long solid stretches are left out. Stretches are cut into blocks so that
 * threads share them evenly, always at the same places whatever the number of threads.
 */
final class Spans {
    private static final int BLOCK = 512;
    /** Solid stretches at least this long are left out; no shorter than a vector, so that a sweep may run over. */
    private static final int GAP = 64;

    private final int[] from;
    private final int[] to;

    Spans(LatticeProblem problem, Layout layout) {
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
                    if (start >= 0 && (cell - end >= GAP || cell - start >= BLOCK && (cell - start) % BLOCK == 0)) {
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

    int count() {
        return from.length;
    }

    int from(int block) {
        return from[block];
    }

    int to(int block) {
        return to[block];
    }
}
