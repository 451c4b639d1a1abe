package slackwater.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import slackwater.analysis.Figures;
import slackwater.analysis.Sloshing;
import slackwater.analysis.Verdict;
import slackwater.report.CsvText;
import slackwater.scenario.Scenario;
import slackwater.search.CoralFinding;
import slackwater.search.Endurance;
import slackwater.search.Endurance.Case;
import slackwater.search.Growth;

/** What may come over the corals, in a keeper's words. */
final class WhatIfText {
    private static final double UNKNOWN_M_PER_S = 99;

    private final List<String> lines = new ArrayList<>();

    private WhatIfText() {
    }

    /** The whole text, a line an entry. */
    static List<String> of(Scenario scenario, List<Endurance> corals, Growth growth, double cellSizeM) {
        WhatIfText text = new WhatIfText();
        corals.forEach(coral -> text.coral(coral, growth));
        text.overview(corals);
        text.say("Computed on cells of %s. A growing plate is drawn 2 cm thick or one cell, whichever is more; other"
                + " corals are taken not to grow, and none to be cut back.", Figures.cell(cellSizeM));
        double depth = scenario.tank().waterLevelM() - scenario.tank().sandDepthM();
        text.say("The water of this tank rocks along in %.2f s and across in %.2f s; no pump should pulse near those.",
                Sloshing.periodS(scenario.tank().insideM().x(), depth, 1),
                Sloshing.periodS(scenario.tank().insideM().y(), depth, 1));
        Sloshing.warnings(scenario).forEach(text::say);
        return List.copyOf(text.lines);
    }

    /** One row a coral and case, for a spreadsheet. */
    static List<String> csv(List<Endurance> corals) {
        List<String> rows = new ArrayList<>();
        rows.add("coral,case,months,mean_cm_per_s,low_cm_per_s,high_cm_per_s,wanted_low_cm_per_s,"
                + "wanted_high_cm_per_s,in_range,remark");
        for (Endurance coral : corals) {
            for (Case one : coral.cases()) {
                String speeds = one.finding().map(found -> String.format(Locale.ROOT, "%.2f,%.2f,%s",
                        found.meanMPerS() * 100, found.lowMPerS() * 100, found.highMPerS() >= UNKNOWN_M_PER_S ? ""
                                : String.format(Locale.ROOT, "%.2f", found.highMPerS() * 100))).orElse(",,");
                rows.add(String.format(Locale.ROOT, "%s,%s,%s,%s,%.2f,%.2f,%s,%s", CsvText.quoted(coral.coral()),
                        CsvText.quoted(one.mishap()), one.months().isPresent() ? one.months().getAsInt() : "", speeds,
                        coral.wantedLowMPerS() * 100, coral.wantedHighMPerS() * 100,
                        one.finding().isEmpty() && !one.isOut() ? "unknown" : one.isOut() ? "no" : "yes",
                        CsvText.quoted(one.remark())));
            }
        }
        return rows;
    }

    private void coral(Endurance coral, Growth growth) {
        say("%s, wants %s to %s cm/s", coral.coral(), Figures.limitCmPerS(coral.wantedLowMPerS()),
                Figures.limitCmPerS(coral.wantedHighMPerS()));
        for (Case one : coral.cases()) {
            say("  %-44s %s", one.mishap(), one.finding().map(WhatIfText::found).orElse("  - " + one.remark()));
        }
        say("  %s", outOfRange(coral, growth));
        say("");
    }

    private static String outOfRange(Endurance coral, Growth growth) {
        if (coral.cases().get(0).isOut()) {
            return "Out of range as it is already.";
        }
        List<String> ways = new ArrayList<>();
        OptionalInt month = coral.firstMonthOut();
        if (month.isPresent()) {
            ways.add(month.getAsInt() == 0 ? "today already, with the plates drawn solid"
                    : String.format(Locale.ROOT, "by growth at month %d (month %.0f with the fastest growth published,"
                            + " month %.0f with the slowest)", month.getAsInt(),
                            Growth.FAST.monthsFor(growth, month.getAsInt()),
                            Growth.SLOW.monthsFor(growth, month.getAsInt())));
        }
        ways.addAll(coral.faultsOut());
        return ways.isEmpty() ? "Stays in range in every case."
                : "Falls out of range: " + String.join("; ", ways) + ".";
    }

    private static String found(CoralFinding found) {
        String range = found.highMPerS() >= UNKNOWN_M_PER_S ? "unknown" : Figures.cmPerS(found.lowMPerS()) + " to "
                + Figures.cmPerS(found.highMPerS());
        String out = found.inRange() ? "" : (found.verdict() == Verdict.MARGINAL ? ", likely too " : ", too ")
                + (found.meanMPerS() < found.wantedLowMPerS() ? "slow" : "strong");
        return String.format(Locale.ROOT, "%5s cm/s (%s) %s %s%s", Figures.cmPerS(found.meanMPerS()), range,
                found.verdict().symbol(), found.verdict().word(), out);
    }

    private void overview(List<Endurance> corals) {
        if (corals.isEmpty()) {
            return;
        }
        say("All at once (\u2713 in range, \u2717 out, ? unknown), corals in the order above:");
        for (int n = 0; n < corals.get(0).cases().size(); n++) {
            StringBuilder marks = new StringBuilder();
            for (Endurance coral : corals) {
                Case one = coral.cases().get(n);
                marks.append(one.isOut() ? " \u2717" : one.finding().isEmpty() ? " ?" : " \u2713");
            }
            say("  %-44s%s", corals.get(0).cases().get(n).mishap(), marks);
        }
        say("");
    }

    private void say(String format, Object... values) {
        lines.add((values.length == 0 ? format : String.format(Locale.ROOT, format, values))
                .replaceAll("\\p{Cntrl}|\\p{Cf}", "?").stripTrailing());
    }
}
