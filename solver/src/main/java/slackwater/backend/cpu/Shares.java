package slackwater.backend.cpu;

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
        for (int block = 0, thread = 1; thread < threads; block++) {
            done += block < work.length ? work[block] : 0;
            while (thread < threads && (done >= all * thread / threads || block >= work.length)) {
                first[thread++] = Math.min(block + 1, work.length);
            }
        }
        first[threads] = work.length;
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
