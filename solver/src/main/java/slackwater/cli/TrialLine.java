package slackwater.cli;

import java.io.PrintWriter;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import slackwater.search.Outcome;
import slackwater.search.Stage;
import slackwater.search.Trial;

/** Says of each trial what came of it and how long the rest will take. */
final class TrialLine implements Consumer<Trial> {
    private final PrintWriter out;
    private final Set<String> counted = new HashSet<>();
    private final Map<Stage, Course> courses = new EnumMap<>(Stage.class);

    /** How one kind of trial goes: so many of them, each expected to take so long until one was measured. */
    private static final class Course {
        private final int planned;
        private final double expectedS;
        private int made;
        private int recalled;
        private double spentS;

        Course(int planned, double expectedS) {
            this.planned = planned;
            this.expectedS = expectedS;
        }

        void made(double wallS) {
            made++;
            spentS += wallS;
        }

        double leftS() {
            return Math.max(0, planned - made - recalled) * (made == 0 ? expectedS : spentS / made);
        }
    }

    /** @param estimate of the whole search; what was measured since takes the place of what it expects */
    TrialLine(PrintWriter out, Estimate estimate) {
        this.out = out;
        courses.put(Stage.SCREEN, new Course(estimate.screenings(), estimate.screenS()));
        courses.put(Stage.CONFIRM, new Course(estimate.confirmations(), estimate.confirmS()));
        courses.put(Stage.HOLD, new Course(estimate.holds(), estimate.holdS()));
    }

    /** A trial that the log knew: it takes no time any more. */
    void recall(Trial trial) {
        if (counted.add(trial.key())) {
            course(trial).recalled++;
        }
    }

    /** Sift and hold are planned together, since they are of one size. */
    private Course course(Trial trial) {
        return courses.get(trial.stage() == Stage.SIFT ? Stage.HOLD : trial.stage());
    }

    @Override
    public void accept(Trial trial) {
        counted.add(trial.key());
        Course course = course(trial);
        course.made(trial.wallS());
        double leftS = courses.values().stream().mapToDouble(Course::leftS).sum();
        String what = switch (trial.stage()) {
            case SCREEN -> "trial " + (course.made + course.recalled) + " of about " + course.planned;
            case CONFIRM -> "confirmed on fine cells";
            case SIFT -> "a second look on smaller cells";
            case HOLD -> "tried whether it holds";
        };
        out.println(String.format(Locale.ROOT, "  %s (%s), about %s left: %s", what, Cost.time(trial.wallS()),
                Cost.time(leftS), found(trial)));
        out.flush();
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
