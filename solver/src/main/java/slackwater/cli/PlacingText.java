package slackwater.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slackwater.analysis.Figures;
import slackwater.analysis.Sloshing;
import slackwater.analysis.Verdict;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.search.CoralFinding;
import slackwater.search.Energy;
import slackwater.search.Finding;
import slackwater.search.Placing;
import slackwater.search.Proposal;
import slackwater.search.PumpWords;
import slackwater.search.Spare;
import slackwater.search.Sturdiness;
import slackwater.search.Task;
import slackwater.search.Wishes;

/** What a search for places came to, in a keeper's words. */
final class PlacingText {
    /** What is known of grains in place and compare, and what to do to know more. */
    static final String GRAINS = "On fine cells food and sand were let fall on the corals: one that keeps them counts"
            + " as out of range. Large cells look at speeds alone. How long each takes to be cleared: slackwater run,"
            + " with %s.";

    private final Task task;
    private final Placing placing;
    private final Fidelities fidelities;
    private final List<String> lines = new ArrayList<>();

    private PlacingText(Task task, Placing placing, Fidelities fidelities) {
        this.task = task;
        this.placing = placing;
        this.fidelities = fidelities;
    }

    /** The whole text, a line an entry. */
    static List<String> of(Task task, Placing placing, Fidelities fidelities, Stages stages) {
        PlacingText text = new PlacingText(task, placing, fidelities);
        text.searched(stages);
        placing.best().ifPresentOrElse(text::best, () -> text.say(placing.screened() == 0 ? "No place is allowed for"
                + " these pumps: every one is on a pane to look through, in a space to keep free, or too close to"
                + " something. Free a pane (--panes) or a space, or take smaller distances (--wishes)."
                : "No layout could be confirmed: every run failed. trials.jsonl says why, trial by trial; other cells"
                + " (--cell-cm) may do."));
        return List.copyOf(text.lines);
    }

    private void searched(Stages stages) {
        say("Looked at %d layouts on cells of %s%s and confirmed %d on cells of %s.", placing.screened(),
                Figures.cell(fidelities.screenCellM()), placing.failed() == 0 ? ""
                        : String.format(Locale.ROOT, " (%d could not be computed)", placing.failed()),
                placing.proposals().size(), Figures.cell(fidelities.cellSizeM()));
        if (stages.screenFactor() != 1) {
            say("Large cells change speeds: seen on the tank as it is, they were taken times %.2f on those of %s and"
                    + " times %.2f on those of %s.", stages.screenFactor(), Figures.cell(fidelities.screenCellM()),
                    stages.siftFactor(), Figures.cell(fidelities.siftCellM()));
        }
        placing.asItIs().ifPresent(now -> say("As it is, %d of %d corals are in range.%s", now.inRange(),
                now.corals().size(), task.hasStart() && !task.startIsAllowed() ? " That layout was left out of the"
                        + " choice, since it breaks a rule: " + task.startBreaks() + "." : ""));
        say("");
    }

    private void best(Proposal best) {
        say(title(best));
        best.confirmed().trial().pumps().forEach(pump -> say("  %s: %s.", pump.name(),
                PumpWords.of(task.scenario().tank(), pump)));
        say("");
        corals(best);
        say(doubt(fidelities.pumpFraction()));
        Finding finding = best.confirmed().finding();
        say("Still water close to bed and rock: %s of it%s.", Figures.percent(finding.stillShareFraction()),
                finding.stillest().isEmpty() ? "" : "; the largest stretch lies " + finding.stillest());
        if (finding.sandFraction() > 0) {
            say("Sand: the strongest gust reaches %.0f %% of what moves it%s.", finding.sandFraction() * 100,
                    finding.sandFraction() > 1 ? ": it will drift" : finding.sandFraction() > 0.8 ? ": it may drift"
                            : "");
        }
        power(best.confirmed().trial().pumps());
        Scenario scenario = task.scenario().with(best.confirmed().trial().pumps());
        Spare.of(scenario, task.pieces(), finding).ifPresentOrElse(this::spare,
                () -> say("Spare: none, since no coral is in range."));
        say("");
        best.sturdiness().ifPresent(this::sturdiness);
        Sloshing.warnings(scenario).forEach(this::say);
        others(best);
        say(GRAINS, "best.toml");
        say("Estimates, good for comparing. Change flow in steps and watch the animals.");
    }

    private String title(Proposal best) {
        Finding finding = best.confirmed().finding();
        String corals = finding.inRange() + " of " + finding.corals().size() + " corals in range";
        String holds = best.holds() ? "it keeps them with weaker pumps and with aims a little off"
                : "with weaker pumps or aims a little off it keeps " + best.kept().orElse(0) + ", and no confirmed"
                        + " layout keeps more";
        String title = best.isStart() ? "Nothing better than the layout as it is: " : "Best layout: ";
        return title + corals + "; " + holds + "." + fewer(finding);
    }

    /** Where more corals are in range as it is: what speaks for that and against it. */
    private String fewer(Finding best) {
        int now = placing.asItIs().map(Finding::inRange).orElse(0);
        if (now <= best.inRange()) {
            return "";
        }
        OptionalInt kept = placing.proposals().stream().filter(Proposal::isStart).map(Proposal::kept).findFirst()
                .orElse(OptionalInt.empty());
        return kept.isEmpty() ? " That is fewer than as it is: keep what you have, or search on with a larger --budget."
                : String.format(Locale.ROOT, " As it is more are in range, %d, but with weaker pumps or aims a little"
                        + " off it keeps %d: weigh the two, or search on with a larger --budget.", now,
                        kept.getAsInt());
    }

    private void corals(Proposal best) {
        List<CoralFinding> now = placing.asItIs().map(Finding::corals).orElse(List.of());
        say("  %-34s %8s %16s %12s %12s  %s", "Coral", "cm/s", "95 % range", "wanted", "as it is", "");
        List<CoralFinding> corals = best.confirmed().finding().corals();
        for (int n = 0; n < corals.size(); n++) {
            CoralFinding coral = corals.get(n);
            say("  %-34s %8s %16s %12s %12s  %s", cut(coral.name()), Figures.cmPerS(coral.meanMPerS()),
                    range(coral), Figures.limitCmPerS(coral.wantedLowMPerS()) + " to "
                            + Figures.limitCmPerS(coral.wantedHighMPerS()),
                    now.isEmpty() ? "-" : Figures.cmPerS(now.get(n).meanMPerS()),
                    coral.verdict().symbol() + " " + coral.verdict().word()
                            + (coral.inRange() ? "" : coral.isBuried() ? ", food or sand stays"
                            : coral.verdict() == Verdict.MARGINAL ? ", likely out of range" : ", out of range"));
        }
    }

    /** What the ranges hold of the pumps' own doubt. */
    static String doubt(double pumpFraction) {
        return pumpFraction == 0 ? "Ranges take the pumps at their word; --pump-uncertainty 20% widens them for pumps"
                + " that may give less or more." : String.format(Locale.ROOT, "Ranges hold pumps that are all off by up"
                        + " to %.0f %% together.", pumpFraction * 100);
    }

    private static String range(CoralFinding coral) {
        return coral.highMPerS() >= 99 ? "unknown"
                : Figures.cmPerS(coral.lowMPerS()) + " to " + Figures.cmPerS(coral.highMPerS());
    }

    private void power(List<Pump> pumps) {
        OptionalDouble watts = Energy.powerW(task.pieces(), pumps);
        if (watts.isEmpty()) {
            say("Watts: unknown, since these pumps are not of the catalogue; the power of their jets ranked them.");
            return;
        }
        Energy energy = Energy.of(watts.getAsDouble(), task.wishes());
        say("Watts: %.1f W, %.0f kWh and %.0f in money a year%s. %s.", energy.powerW(), energy.kWhPerYear(),
                energy.costPerYear(), Energy.isQuiet(task.pieces(), pumps) ? ", all of it at quiet outputs"
                        : "; at least one pump runs louder than its quiet output", tariff(task.wishes()));
    }

    /** What energy is taken to cost. */
    static String tariff(Wishes wishes) {
        return String.format(Locale.ROOT, "Money is your own; a kilowatt hour is taken at %s, for %s hours a day"
                + " (--tariff, --wishes)", Figures.decimal(wishes.tariffPerKWh(), 2),
                Figures.decimal(wishes.hoursPerDay(), 0));
    }

    private void spare(Spare spare) {
        say("Spare: every coral that is in range stays there with all outputs down to %s %% or up to %.0f %% of what"
                + " is set, as far as the pumps go%s.", Figures.percentUp(spare.lowestFraction()),
                Math.floor(spare.highestFraction() * 100), spare.exact() ? " (speeds in proportion)"
                        : " (a rough guide: speeds taken in proportion, which a return line or pulsing pumps do not"
                                + " quite allow)");
    }

    private void sturdiness(Sturdiness sturdiness) {
        say("Does it hold?");
        for (Sturdiness.Check check : sturdiness.checks()) {
            say("  %s %s (%s): %s", !check.known() ? "?" : check.holds() ? "\u2713" : "\u2717", check.name(),
                    check.computed() ? "computed on cells of " + Figures.cell(fidelities.siftCellM())
                            : "speeds in proportion",
                    !check.known() ? "unknown, since a run failed; no coral counts as kept"
                            : check.holds() ? "no coral lost" : "loses " + String.join(", ", check.fallen()));
        }
        say("");
    }

    private void others(Proposal best) {
        List<Proposal> others = placing.proposals().stream().filter(one -> one != best).toList();
        if (others.isEmpty()) {
            return;
        }
        say("Also confirmed:");
        for (Proposal other : others) {
            Finding finding = other.confirmed().finding();
            say("  %s%d of %d corals in range, %s of the water at bed and rock still%s", other.isStart()
                            ? "the layout as it is: " : "", finding.inRange(), finding.corals().size(),
                    Figures.percent(finding.stillShareFraction()), other.kept().isEmpty() ? ""
                            : ", keeps " + other.kept().getAsInt() + " when something is off");
            if (!other.isStart()) {
                other.confirmed().trial().pumps().forEach(pump -> say("    %s: %s.", pump.name(),
                        PumpWords.of(task.scenario().tank(), pump)));
            }
        }
        say("");
    }

    private static String cut(String name) {
        return name.length() <= 34 ? name : name.substring(0, 33) + "\u2026";
    }

    private void say(String format, Object... values) {
        lines.add((values.length == 0 ? format : String.format(Locale.ROOT, format, values))
                .replaceAll("\\p{Cntrl}|\\p{Cf}", "?").stripTrailing());
    }
}
