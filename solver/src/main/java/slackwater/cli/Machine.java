package slackwater.cli;

import java.util.Arrays;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * What this machine can do at most, by plain loops on some threads; the middle of a few tries.
 *
 * @param bytesPerS memory read and written in place: 1 is added to every number of an array larger than any cache
 * @param operationsPerS additions and multiplications in single precision on numbers that stay in the nearest cache
 */
record Machine(double bytesPerS, double operationsPerS) {
    static final int TRIES = 5;
    private static final int WARM_UPS = 2;
    private static final int FLOATS = 32 * 1024 * 1024;
    private static final int NEAR_FLOATS = 2048;
    private static final int NEAR_ROUNDS = 20_000;
    /** Additions and multiplications for one number in {@link #fold}. */
    private static final int FOLDS = 16;

    static Machine measure(int threads) {
        float[] far = new float[FLOATS];
        int share = FLOATS / threads;
        double bytes = 2.0 * Float.BYTES * share * threads
                / seconds(threads, worker -> raise(far, worker * share, share));
        float[][] near = new float[threads][NEAR_FLOATS];
        double operations = (double) FOLDS * NEAR_FLOATS * NEAR_ROUNDS * threads
                / seconds(threads, worker -> fold(near[worker]));
        return new Machine(bytes, operations);
    }

    private static double seconds(int threads, IntConsumer work) {
        double[] times = IntStream.range(0, TRIES + WARM_UPS).mapToDouble(attempt -> {
            long start = System.nanoTime();
            Thread[] others = new Thread[threads - 1];
            Arrays.setAll(others, n -> new Thread(() -> work.accept(n + 1)));
            Arrays.stream(others).forEach(Thread::start);
            work.accept(0);
            Arrays.stream(others).forEach(Machine::join);
            return (System.nanoTime() - start) * 1e-9;
        }).skip(WARM_UPS).sorted().toArray();
        return times[times.length / 2];
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void raise(float[] values, int from, int count) {
        for (int n = from; n < from + count; n++) {
            values[n] += 1;
        }
    }

    private static void fold(float[] values) {
        for (int round = 0; round < NEAR_ROUNDS; round++) {
            foldOnce(values);
        }
    }

    private static void foldOnce(float[] values) {
        for (int n = 0; n < values.length; n++) {
            float a = values[n] * 0.5f + 0.25f;
            float b = a * 0.75f + 0.125f;
            float c = b * 0.25f + 0.5f;
            float d = c * 0.875f + 0.0625f;
            float e = d * 0.5f + 0.25f;
            float g = e * 0.75f + 0.125f;
            float h = g * 0.25f + 0.5f;
            values[n] = h * 0.875f + 0.0625f;
        }
    }
}
