package slackwater.backend.cpu;

import java.util.Arrays;

/**
 * Copies of single numbers within one array, block by block of the sweep, none of which reads what another one writes.
 * Once packed they are in the order of memory within a block, and neighbours that come from neighbours are one run:
 * along a surface that is a row of cells.
 */
final class Copies {
    /** From this length on a block copy is quicker than a loop. */
    private static final int LONG_RUN = 8;

    /** First run of each block. */
    private final int[] firstRun;
    private long[] pairs = new long[1024];
    private int[] blocks = new int[1024];
    private int count;
    private int[] to = new int[0];
    private int[] from = new int[0];
    private int[] length = new int[0];
    private int runs;

    /** @param blocks how many blocks there are, from 0 on */
    Copies(int blocks) {
        firstRun = new int[blocks + 1];
    }

    /** Adds a copy for a cell of a block, none of an earlier block than the last one added. */
    void add(int block, int target, int source) {
        if (count == pairs.length) {
            pairs = Arrays.copyOf(pairs, 2 * count);
            blocks = Arrays.copyOf(blocks, 2 * count);
        }
        blocks[count] = block;
        pairs[count++] = (long) target << Integer.SIZE | source;
    }

    /** Ends the adding; before the first copy. */
    void pack() {
        to = new int[count];
        from = new int[count];
        length = new int[count];
        for (int block = 0, n = 0; block < firstRun.length - 1; block++) {
            firstRun[block] = runs;
            int end = n;
            while (end < count && blocks[end] == block) {
                end++;
            }
            Arrays.sort(pairs, n, end);
            for (; n < end; n++) {
                append((int) (pairs[n] >>> Integer.SIZE), (int) pairs[n], runs > firstRun[block]);
            }
        }
        firstRun[firstRun.length - 1] = runs;
        to = Arrays.copyOf(to, runs);
        from = Arrays.copyOf(from, runs);
        length = Arrays.copyOf(length, runs);
        pairs = new long[0];
        blocks = new int[0];
    }

    /** Lengthens the last run by a copy, if one of this block may be, or begins a new one. */
    private void append(int target, int source, boolean open) {
        int last = runs - 1;
        if (open && target == to[last] + length[last] && source == from[last] + length[last]) {
            length[last]++;
            return;
        }
        to[runs] = target;
        from[runs] = source;
        length[runs++] = 1;
    }

    /** How many runs a block has. */
    int runs(int block) {
        return firstRun[block + 1] - firstRun[block];
    }

    /** Does the copies of a block. */
    void apply(float[] f, int block) {
        for (int run = firstRun[block]; run < firstRun[block + 1]; run++) {
            int target = to[run];
            int source = from[run];
            int cells = length[run];
            if (cells >= LONG_RUN) {
                System.arraycopy(f, source, f, target, cells);
            } else {
                for (int n = 0; n < cells; n++) {
                    f[target + n] = f[source + n];
                }
            }
        }
    }
}
