package slackwater.cli;

import java.io.PrintWriter;
import java.util.Locale;
import slackwater.simulation.Progress;

/** One line on a terminal that shows how far a run is, rewritten twice a second. */
final class ProgressBar implements Progress {
    private static final int WIDTH = 30;
    private static final long INTERVAL_NS = 500_000_000;

    private final PrintWriter out;
    private long lastNs;
    private int length;

    ProgressBar(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void at(double share, double waterS, double leftS) {
        long now = System.nanoTime();
        if (now - lastNs < INTERVAL_NS) {
            return;
        }
        lastNs = now;
        int done = (int) Math.round(share * WIDTH);
        String line = String.format(Locale.ROOT, "[%s%s] %.0f s of water, at most %s left", "#".repeat(done),
                ".".repeat(WIDTH - done), waterS, Cost.time(leftS));
        out.print("\r" + line + " ".repeat(Math.max(0, length - line.length())));
        out.flush();
        length = line.length();
    }

    /** Takes the line away, if there is one. */
    void clear() {
        if (length == 0) {
            return;
        }
        out.print("\r" + " ".repeat(length) + "\r");
        out.flush();
    }
}
