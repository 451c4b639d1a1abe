package slackwater.backend.cpu;

import java.util.Arrays;

/** Blocks of the sweep shared out to threads: neighbours to each, and about the same work. */
final class Shares {
    private final int[] first;

    /** @param work of each block, in any unit */
    Shares(double[] work, int threads) {
        first = new int[threads + 1];
        double all = 0;
        for (double one : work) {
            all += one;
        }
        double done = 0;
        int thread = 1;
        for (int block = 0; block < work.length; block++) {
            done += work[block];
            while (thread < threads && done >= all * thread / threads) {
                first[thread++] = block + 1;
            }
        }
        Arrays.fill(first, thread, threads + 1, work.length);
    }

    /** First block of a thread, which has all up to the first one of the next. */
    int first(int thread) {
        return first[thread];
    }

    /** The thread that has a block. */
    int thread(int block) {
        int thread = 0;
        while (first[thread + 1] <= block) {
            thread++;
        }
        return thread;
    }
}
