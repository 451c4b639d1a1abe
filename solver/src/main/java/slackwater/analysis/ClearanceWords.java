package slackwater.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import slackwater.detritus.Clearance;
import slackwater.detritus.Clearance.Outcome;
import slackwater.detritus.Grains;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;

/**
 * What the clearing of a coral means for its verdict, and in words.
 *
 * <p>Corals with small polyps clean themselves badly, plates worst, and depend on the water; large ones clean
 * themselves (Stafford-Smith and Ormond 1992, Aust. J. Mar. Freshw. Res. 43:683: 42 species, 50 mg/cm2 of sediment).
 * So what stays fails a plating or branching coral, and leaves others Marginal. Sand counts for plates alone: it is
 * their standard test.
 */
public final class ClearanceWords {
    private static final Comparator<Clearance.Course> QUICKEST_FIRST = Comparator
            .comparingDouble((Clearance.Course course) -> course.clearS().orElse(Double.POSITIVE_INFINITY))
            .thenComparingDouble(Clearance.Course::leftFraction);
    private static final double MINUTE_S = 60;

    private ClearanceWords() {
    }

    static Verdict verdict(Coral coral, List<Clearance> clearances) {
        return clearances.stream().filter(clearance -> counts(coral, clearance))
                .map(clearance -> verdict(coral, clearance)).reduce(Verdict.NONE, Verdict::worseOf);
    }

    private static boolean counts(Coral coral, Clearance clearance) {
        return clearance.grain().name().equals(Grains.FOOD) || coral.group() == CoralGroup.PLATING;
    }

    private static Verdict verdict(Coral coral, Clearance clearance) {
        boolean depends = coral.group() == CoralGroup.PLATING || coral.group() == CoralGroup.SMALL_POLYP;
        return switch (clearance.outcome()) {
            case CLEARS -> Verdict.PASS;
            case UNSURE -> Verdict.MARGINAL;
            case STAYS -> depends ? Verdict.FAIL : Verdict.MARGINAL;
        };
    }

    /** One clause for each kind that counts: "; food on it is gone in 3 s". */
    static String of(Coral coral, List<Clearance> clearances) {
        StringBuilder words = new StringBuilder();
        clearances.stream().filter(clearance -> counts(coral, clearance))
                .forEach(clearance -> words.append("; ").append(clause(clearance)));
        return words.toString();
    }

    private static String clause(Clearance clearance) {
        String what = clearance.grain().name();
        if (clearance.outcome() == Outcome.STAYS) {
            return what + " on it stays: " + why(clearance);
        }
        OptionalDouble clear = clearance.likely().clearS();
        String likely = clear.isPresent() ? what + " on it is gone in " + time(clear.getAsDouble())
                : Figures.percent(clearance.likely().leftFraction()) + " of the " + what
                + " on it is still there after " + time(Clearance.WATCHED_S);
        if (clearance.outcome() == Outcome.CLEARS) {
            return likely;
        }
        Clearance.Course worst = clearance.courses().get(clearance.courses().size() - 1);
        return likely + ", " + (clear.isPresent() ? "but if it clings " + harder(worst.hold()) + " as hard "
                + Figures.percent(worst.leftFraction()) + " stays" : "but it may go if it clings "
                + softer(clearance.courses().get(0).hold()) + " as hard") + " (" + why(clearance) + ")";
    }

    private static String harder(double hold) {
        String times = Figures.decimal(hold, 1);
        return times.equals("2.0") ? "twice" : times + " times";
    }

    private static String softer(double hold) {
        String times = Figures.decimal(hold, 1);
        return times.equals("0.5") ? "half" : Figures.decimal(hold, hold < 0.1 ? 2 : 1) + " times";
    }

    private static String why(Clearance clearance) {
        return "gusts drag with " + Figures.decimal(clearance.gustShearPa(), 3) + " Pa, and it lifts at about "
                + Figures.decimal(clearance.liftPa(), 3) + " Pa";
    }

    /** Time until it is clear, or what stays, with the range that doubt makes: "3 s (2 s to 7 % stays)". */
    public static String range(Clearance clearance) {
        if (clearance.outcome() == Outcome.STAYS) {
            return "stays";
        }
        // Chance alone can make a try with firmer grains the quicker one: the range goes from the best to the worst.
        List<Clearance.Course> courses = clearance.courses().stream().sorted(QUICKEST_FIRST).toList();
        if (courses.stream().allMatch(course -> course.clearS().isEmpty())) {
            return Figures.percent(clearance.likely().leftFraction()) + " stays ("
                    + Figures.percent(courses.get(0).leftFraction()) + " to "
                    + Figures.percent(courses.get(courses.size() - 1).leftFraction()) + ")";
        }
        return orStays(clearance.likely()) + " (" + orStays(courses.get(0)) + " to "
                + orStays(courses.get(courses.size() - 1)) + ")";
    }

    private static String orStays(Clearance.Course course) {
        return course.clearS().isPresent() ? time(course.clearS().getAsDouble())
                : Figures.percent(course.leftFraction()) + " stays";
    }

    /** A time in seconds up to a minute and a half, else in minutes, with its unit. */
    public static String time(double timeS) {
        return timeS < 1.5 * MINUTE_S ? Figures.decimal(timeS, 0) + " s" : Figures.plain(timeS / MINUTE_S) + " min";
    }
}
