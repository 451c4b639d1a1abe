package slackwater.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.Consumer;
import slackwater.search.Outcome;
import slackwater.search.Stage;
import slackwater.search.Trial;

/** Says of each trial what came of it and how long the rest will take. */
final class TrialLine implements Consumer<Trial> {
    private final PrintWriter out;
    private final int screenings;
    private final double afterwardsS;
    private int screened;
    private double spentS;

    /**
     * @param screenings trials on large cells that are planned
     * @param afterwardsS what is likely to come after them, seconds
     */
    TrialLine(PrintWriter out, int screenings, double afterwardsS) {
        this.out = out;
        this.screenings = screenings;
        this.afterwardsS = afterwardsS;
    }

    @Override
    public void accept(Trial trial) {
        String what;
        if (trial.stage() == Stage.SCREEN) {
            screened++;
            spentS += trial.wallS();
            double left = Math.max(0, screenings - screened) * spentS / screened + afterwardsS;
            what = String.format(Locale.ROOT, "trial %d of about %d, about %s left", screened, screenings,
                    Cost.time(left));
        } else {
            what = switch (trial.stage()) {
                case CONFIRM -> "confirmed on fine cells";
                case SIFT -> "a second look on smaller cells";
                default -> "tried whether it holds";
            };
        }
        out.println(String.format(Locale.ROOT, "  %s (%s): %s", what, Cost.time(trial.wallS()), found(trial)));
    }

    private static String found(Trial trial) {
        if (trial.outcome() instanceof Outcome.Read read) {
            return String.format(Locale.ROOT, "%d of %d corals in range, %.0f %% of the water at bed and rock still",
                    read.finding().inRange(), read.finding().corals().size(),
                    read.finding().stillShareFraction() * 100);
        }
        return "no reading, " + ((Outcome.Failed) trial.outcome()).why();
    }
}
