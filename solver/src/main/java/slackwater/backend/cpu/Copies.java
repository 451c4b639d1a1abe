package slackwater.backend.cpu;

import java.util.Arrays;

/**
 * Copies of single numbers within one array, none of which reads what another one writes. Once packed they are in the
 * order of memory, and neighbours that come from neighbours are one run: along a flat wall that is a row of cells.
 */
final class Copies {
    /** From this length on a block copy is quicker than a loop. */
    private static final int LONG_RUN = 8;

    private long[] pairs = new long[1024];
    private int count;
    private int[] to = new int[0];
    private int[] from = new int[0];
    private int[] length = new int[0];
    private int runs;

    void add(int target, int source) {
        if (count == pairs.length) {
            pairs = Arrays.copyOf(pairs, 2 * count);
        }
        pairs[count++] = (long) target << Integer.SIZE | source;
    }

    /** Ends the adding; before the first copy. */
    void pack() {
        Arrays.sort(pairs, 0, count);
        to = new int[count];
        from = new int[count];
        length = new int[count];
        for (int n = 0; n < count; n++) {
            int target = (int) (pairs[n] >>> Integer.SIZE);
            int source = (int) pairs[n];
            int last = runs - 1;
            if (runs > 0 && target == to[last] + length[last] && source == from[last] + length[last]) {
                length[last]++;
            } else {
                to[runs] = target;
                from[runs] = source;
                length[runs++] = 1;
            }
        }
        to = Arrays.copyOf(to, runs);
        from = Arrays.copyOf(from, runs);
        length = Arrays.copyOf(length, runs);
        pairs = new long[0];
    }

    int runs() {
        return runs;
    }

    /** Does the runs [first, end). */
    void apply(float[] f, int first, int end) {
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
