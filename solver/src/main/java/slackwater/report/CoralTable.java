package slackwater.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Doubt;
import slackwater.analysis.Figures;
import slackwater.result.FlowResult;

/** The corals, one row each; their numbers are those in the pictures. */
final class CoralTable {
    private CoralTable() {
    }

    static String of(FlowResult result) {
        List<CoralReading> corals = result.assessment().corals();
        if (corals.isEmpty()) {
            return "<h2>Corals</h2>\n<p>The scenario names no corals, so there is no verdict; the pictures and the"
                    + " still water below stand for themselves.</p>\n";
        }
        StringBuilder html = new StringBuilder("<h2>Corals</h2>\n<table>\n<thead><tr><th>No.</th><th>Coral</th>"
                + "<th>Verdict</th><th class=\"figure\">Mean speed<br>cm/s</th><th class=\"figure\">Wanted<br>cm/s</th>"
                + "<th>What that means</th></tr></thead>\n<tbody>\n");
        for (int n = 0; n < corals.size(); n++) {
            html.append(row(n + 1, corals.get(n)));
        }
        return html.append("</tbody>\n</table>\n").append(notes(corals)).toString();
    }

    private static String row(int number, CoralReading coral) {
        return "<tr><td>" + number + "</td><td>" + Html.escape(coral.coral().name()) + "<small>"
                + CoralNeeds.nameOf(coral.coral().group()) + "</small></td><td class=\"mark\">"
                + ReportHtml.mark(coral.verdict()) + "</td><td class=\"figure\">" + reading(coral)
                + "<small>" + parts(coral.doubt()) + "<br>gusts " + Figures.cmPerS(coral.reading().p95MPerS())
                + "</small></td><td class=\"figure\">"
                + wanted(coral) + "</td><td>" + Html.escape(coral.sentence()) + "</td></tr>\n";
    }

    /** Mean and the range of its doubt. */
    static String reading(CoralReading coral) {
        return Figures.cmPerS(coral.reading().meanMPerS()) + " (" + (Double.isFinite(coral.interval().highMPerS())
                ? Figures.interval(coral.interval()) : "range unknown") + ")";
    }

    /** Where the doubt comes from, in the order of time: chance, cells, pumps. */
    private static String parts(Doubt doubt) {
        return "chance " + part(doubt.chanceMPerS())
                + (doubt.gridMPerS().isPresent() ? ", cells " + part(doubt.gridMPerS().getAsDouble()) : "")
                + (doubt.pumpMPerS() > 0 ? ", pumps " + part(doubt.pumpMPerS()) : "");
    }

    /** Rounded up: it never looks better than it is. */
    private static String part(double halfMPerS) {
        return "\u00b1\u00a0" + (Double.isFinite(halfMPerS)
                ? Figures.decimal(Math.ceil(halfMPerS * 1000 - 1e-9) / 10, 1) : "?");
    }

    static String wanted(CoralReading coral) {
        return Figures.limitCmPerS(coral.range().lowMPerS()) + " to "
                + Figures.limitCmPerS(coral.range().highMPerS());
    }

    private static String notes(List<CoralReading> corals) {
        Map<String, String> sources = new LinkedHashMap<>();
        corals.forEach(coral -> sources.putIfAbsent(
                CoralNeeds.nameOf(coral.coral().group()) + ", " + wanted(coral) + " cm/s", coral.range().source()));
        StringBuilder html = new StringBuilder("<p class=\"source\">Mean speed of the water just above each coral, over"
                + " a disc of its size, with the range that holds the true mean 95 times in 100. It is made of what is"
                + " left to chance, what the size of the cells may do, and what the pumps may do, as far as each was"
                + " looked at. Gusts: the speed that is passed 5 % of the time. Where a limit lies within the range,"
                + " the verdict is Marginal. Where the wanted speeds come from:</p>\n<ul class=\"source\">\n");
        sources.forEach((what, source) -> html.append("<li>").append(Html.escape(what)).append(": ")
                .append(Html.escape(source)).append(".</li>\n"));
        return html.append("</ul>\n").toString();
    }
}
