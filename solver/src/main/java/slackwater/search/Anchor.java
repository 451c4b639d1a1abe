package slackwater.search;

import java.util.Arrays;

/** What large cells make of the speeds, seen on one layout that was computed on both grids. */
public final class Anchor {
    private static final double LEAST_M_PER_S = 0.002;
    private static final double LEAST = 0.5;
    private static final double MOST = 2.5;

    private Anchor() {
    }

    /**
     * The factor that brings readings of the screening grid up to those of the fine one: the median over the corals,
     * within 0.5 to 2.5; 1 where there is nothing to compare.
     */
    public static double factor(Outcome screened, Outcome confirmed) {
        if (!(screened instanceof Outcome.Read coarse) || !(confirmed instanceof Outcome.Read fine)) {
            return 1;
        }
        double[] ratios = new double[coarse.finding().corals().size()];
        int count = 0;
        for (int n = 0; n < ratios.length; n++) {
            double low = coarse.finding().corals().get(n).meanMPerS();
            if (low > LEAST_M_PER_S) {
                ratios[count++] = fine.finding().corals().get(n).meanMPerS() / low;
            }
        }
        if (count == 0) {
            return 1;
        }
        double[] sorted = Arrays.copyOf(ratios, count);
        Arrays.sort(sorted);
        double median = (sorted[(count - 1) / 2] + sorted[count / 2]) / 2;
        return Math.max(LEAST, Math.min(MOST, median));
    }
}
