package slackwater.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.CoralReading;
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
                + "<small>gusts " + Figures.cmPerS(coral.reading().p95MPerS()) + "</small></td><td class=\"figure\">"
                + wanted(coral) + "</td><td>" + Html.escape(coral.sentence()) + "</td></tr>\n";
    }

    /** Mean and margin, the margin rounded up: it never looks better than it is. */
    static String reading(CoralReading coral) {
        double marginMPerS = coral.reading().marginMPerS();
        String margin = Double.isFinite(marginMPerS) ? Figures.decimal(Math.ceil(marginMPerS * 1000) / 10, 1) : "?";
        return Figures.cmPerS(coral.reading().meanMPerS()) + " \u00b1 " + margin;
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
                + " a disc of its size; \u00b1 is the 95 % interval of that mean. Gusts: the speed that is passed 5 %"
                + " of the time. Where a limit lies within the \u00b1, the verdict is Marginal. Where the wanted speeds"
                + " come from:</p>\n<ul class=\"source\">\n");
        sources.forEach((what, source) -> html.append("<li>").append(Html.escape(what)).append(": ")
                .append(Html.escape(source)).append(".</li>\n"));
        return html.append("</ul>\n").toString();
    }
}
