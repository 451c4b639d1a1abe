package slackwater.backend.cpu;

import java.util.Arrays;

/**
 * Copies of single numbers within one array, none of which reads what another one writes, each due before two blocks of
 * the sweep: just before the first of them or, where two threads have them or where that was asked for, before the
 * whole sweep. Once packed they are in that order and within a block in the order of memory, and neighbours that come
 * from neighbours are one run: along a flat wall that is a row of cells.
 */
final class Copies {
    /** From this length on a block copy is quicker than a loop. */
    private static final int LONG_RUN = 8;

    /** First run of what is due before the whole sweep, then of each block. */
    private final int[] firstRun;
    private long[] pairs = new long[1024];
    private int[] blocks = new int[1024];
    private int[] others = new int[1024];
    private int count;
    private int[] to = new int[0];
    private int[] from = new int[0];
    private int[] length = new int[0];
    private int runs;

    /** @param blocks how many blocks there are, from 0 on */
    Copies(int blocks) {
        firstRun = new int[blocks + 2];
    }

    /**
     * Adds a copy that is due before two blocks.
     *
     * @param block the first of them; below 0 to have it done before the whole sweep
     */
    void add(int block, int other, int target, int source) {
        if (count == pairs.length) {
            pairs = Arrays.copyOf(pairs, 2 * count);
            blocks = Arrays.copyOf(blocks, 2 * count);
            others = Arrays.copyOf(others, 2 * count);
        }
        blocks[count] = block;
        others[count] = other;
        pairs[count++] = (long) target << Integer.SIZE | source;
    }

    /** How many copies are due just before each block, or might be; before they are packed. */
    int[] counts() {
        int[] counts = new int[firstRun.length - 2];
        for (int n = 0; n < count; n++) {
            if (blocks[n] >= 0) {
                counts[blocks[n]]++;
            }
        }
        return counts;
    }

    /** Ends the adding; before the first copy. */
    void pack(Shares shares) {
        for (int n = 0; n < count; n++) {
            boolean shared = blocks[n] >= 0 && shares.thread(blocks[n]) != shares.thread(others[n]);
            blocks[n] = shared ? 0 : blocks[n] + 1;
        }
        to = new int[count];
        from = new int[count];
        length = new int[count];
        int[] end = sortIntoBlocks();
        for (int block = 0, n = 0; block < end.length; block++) {
            firstRun[block] = runs;
            Arrays.sort(pairs, n, end[block]);
            for (; n < end[block]; n++) {
                append((int) (pairs[n] >>> Integer.SIZE), (int) pairs[n], runs > firstRun[block]);
            }
        }
        firstRun[firstRun.length - 1] = runs;
        to = Arrays.copyOf(to, runs);
        from = Arrays.copyOf(from, runs);
        length = Arrays.copyOf(length, runs);
        pairs = new long[0];
        blocks = new int[0];
        others = new int[0];
    }

    /** Brings the pairs of each block together; returns where each ends. */
    private int[] sortIntoBlocks() {
        int[] end = new int[firstRun.length - 1];
        for (int n = 0; n < count; n++) {
            end[blocks[n]]++;
        }
        for (int block = 1; block < end.length; block++) {
            end[block] += end[block - 1];
        }
        int[] next = end.clone();
        long[] sorted = new long[count];
        for (int n = 0; n < count; n++) {
            sorted[--next[blocks[n]]] = pairs[n];
        }
        pairs = sorted;
        return end;
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

    /** Does what is due before the whole sweep. */
    void applyEarly(float[] f) {
        applyRuns(f, 0, firstRun[1]);
    }

    /** Does what is due before the blocks [first, end). */
    void apply(float[] f, int first, int end) {
        applyRuns(f, firstRun[first + 1], firstRun[end + 1]);
    }

    private void applyRuns(float[] f, int first, int end) {
        for (int run = first; run < end; run++) {
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
