package slackwater.backend.cpu;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;

/**
 * A few threads that do the same task on their own share of the cells, over and over. The caller is worker 0. Waiting
 * spins for a moment, then yields, then sleeps, so that an idle crew costs nothing. No allocation per task.
 */
final class Crew implements AutoCloseable {
    private static final int SPINS = 2_000;
    private static final int YIELDS = 20_000;
    private static final long NAP_NS = 100_000;

    /** A worker's share of a task. */
    interface Task {
        void run(int worker);
    }

    private final int size;
    private final AtomicInteger busy = new AtomicInteger();
    private volatile int round;
    private volatile Throwable failure;
    private Task task = worker -> { };
    private boolean closed;

    Crew(int size) {
        this.size = size;
        for (int worker = 1; worker < size; worker++) {
            int number = worker;
            Thread thread = new Thread(() -> work(number), "slackwater-" + worker);
            thread.setDaemon(true);
            thread.start();
        }
    }

    int size() {
        return size;
    }

    /** Runs every worker's share and returns when all are done; throws what a worker threw. */
    void run(Task next) {
        task = next;
        busy.set(size - 1);
        round = round + 1;
        next.run(0);
        for (int waits = 0; busy.get() > 0; waits++) {
            pause(waits);
        }
        Throwable thrown = failure;
        if (thrown != null) {
            throw new IllegalStateException("a solver thread failed: " + thrown.getMessage(), thrown);
        }
    }

    private void work(int worker) {
        int seen = 0;
        while (true) {
            for (int waits = 0; round == seen; waits++) {
                pause(waits);
            }
            seen++;
            if (closed) {
                return;
            }
            try {
                task.run(worker);
            } catch (RuntimeException | Error thrown) {
                failure = thrown;
            } finally {
                busy.decrementAndGet();
            }
        }
    }

    private static void pause(int waits) {
        if (waits < SPINS) {
            Thread.onSpinWait();
        } else if (waits < YIELDS) {
            Thread.yield();
        } else {
            LockSupport.parkNanos(NAP_NS);
        }
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            round = round + 1;
        }
    }
}
