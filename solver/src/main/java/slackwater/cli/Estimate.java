package slackwater.cli;

import java.util.Locale;
import slackwater.analysis.Figures;
import slackwater.scenario.Scenario;
import slackwater.search.Placing;
import slackwater.search.Sturdiness;
import slackwater.search.Task;

/**
 * What a search would take on this machine.
 *
 * @param screenings trials on large cells, the tank as it is counted in
 * @param screenS of one of them, seconds
 * @param confirmations layouts on fine cells
 * @param confirmS of one of them, seconds
 * @param holds runs that try whether a layout holds
 * @param holdS of one of them, seconds
 */
record Estimate(int screenings, double screenS, int confirmations, double confirmS, int holds, double holdS,
                Fidelities fidelities) {
    /** Layouts that are likely tried before one holds. */
    private static final int TRIED = 2;

    /**
     * Measures each kind of trial briefly.
     *
     * @param few layouts to confirm beside the start; 0 where only large cells are computed
     */
    static Estimate of(Task task, Fidelities fidelities, int screenings, int few) {
        Scenario tried = task.hasStart() ? task.scenario() : task.plain();
        int threads = fidelities.threads();
        TrialCost screen = TrialCost.of(tried, fidelities.screen(1), threads);
        TrialCost sift = TrialCost.of(tried, fidelities.sift(1), threads).within(screen);
        TrialCost confirm = TrialCost.of(tried, fidelities.confirm(), threads).within(sift);
        int holds = few == 0 ? 0 : TRIED * Sturdiness.runs(tried) + few * Placing.SIFTED_PER_CONFIRMED;
        return new Estimate(screenings + 1, screen.seconds(), few + 1, confirm.seconds(), holds, sift.seconds(),
                fidelities);
    }

    /** What comes after the trials on large cells, seconds. */
    double afterwardsS() {
        return confirmations * confirmS + holds * holdS;
    }

    double totalS() {
        return screenings * screenS + afterwardsS();
    }

    String sentence() {
        String after = holds == 0 ? "" : String.format(Locale.ROOT, ", some %d runs on cells of %s (%s each) for a"
                + " second look and for what holds", holds, Figures.cell(fidelities.siftCellM()), each(holdS));
        return String.format(Locale.ROOT, "About %s in all: %d trials on cells of %s (%s each, %s an hour on %d"
                + " threads)%s, %d %s on cells of %s (%s each).", Cost.time(totalS()), screenings,
                Figures.cell(fidelities.screenCellM()), each(screenS), perHour(), fidelities.threads(), after,
                confirmations, confirmations == 1 ? "layout" : "layouts", Figures.cell(fidelities.cellSizeM()),
                each(confirmS));
    }

    private String perHour() {
        return String.format(Locale.ROOT, "%.0f", 3600 / Math.max(0.01, screenS));
    }

    private static String each(double seconds) {
        return seconds < 10 ? String.format(Locale.ROOT, "%.1f s", seconds) : Cost.time(seconds);
    }
}
