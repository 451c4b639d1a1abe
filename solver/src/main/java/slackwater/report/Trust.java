package slackwater.report;

import java.util.ArrayList;
import java.util.List;
import slackwater.analysis.Confidence;
import slackwater.analysis.Figures;
import slackwater.field.RunQuality;
import slackwater.result.FlowResult;
import slackwater.result.Provenance;

/** How far the numbers can be trusted, and what it takes to compute them again. */
final class Trust {
    private static final double TROUBLED_DRIFT = 1e-5;

    private Trust() {
    }

    static String of(FlowResult result) {
        RunQuality quality = result.quality();
        List<String> points = new ArrayList<>();
        points.add((quality.settled() ? "The readings settled. " : "The readings did NOT settle. ") + quality.remark());
        points.add("The first " + Figures.decimal(quality.spinUpS(), 0) + " s of water time were left out; the next "
                + Figures.decimal(quality.averagedS(), 0) + " s were averaged. Readings are means over that time.");
        Confidence confidence = result.assessment().confidence();
        points.addAll(confidence.grid());
        points.addAll(confidence.pumps());
        points.add("A range holds what was looked at, not the faults of the model: a flat surface, corals that do not"
                + " slow the water, rock without pores, a tank drawn from a sketch.");
        points.add("Speeds are means of the water's speed at each moment, turbulence included; the speed of the mean"
                + " stream alone is lower, in such tanks by about a third.");
        points.add("In a jet, the speed some 10 to 20 outlet widths from its pump reads 10 to 25 % low against"
                + " published jets: a jet starts wider here than from the real outlet, and mixes a little too fast.");
        points.add("Still water is the least certain finding: even fine computations agree on only about half of the"
                + " stillest places. Treat its map as where to look, not as a border.");
        if (Math.abs(quality.massDriftPerMinute()) > TROUBLED_DRIFT) {
            points.add("Caution: the amount of water drifted by " + quality.massDriftPerMinute()
                    + " of the whole a minute, more than the 0.00001 that is allowed.");
        }
        StringBuilder html = new StringBuilder("<h2>How far to trust this</h2>\n<ul>\n");
        points.forEach(point -> html.append("<li>").append(Html.escape(point)).append("</li>\n"));
        return html.append("</ul>\n").toString();
    }

    static String provenance(FlowResult result) {
        Provenance provenance = result.provenance();
        RunQuality quality = result.quality();
        String[][] rows = {
            {"Slackwater", provenance.version()},
            {"Scenario file", provenance.scenarioFile()},
            {"SHA-256 of it", provenance.scenarioSha256()},
            {"Grid", result.grid().nx() + " x " + result.grid().ny() + " x " + result.grid().nz() + " cells of "
                    + Figures.plain(provenance.cellSizeM() * 100) + " cm"},
            {"Collision operator", provenance.operator()},
            {"Back end", provenance.backend() + ", " + provenance.threads() + " threads"},
            {"Seed", Long.toString(provenance.seed())},
            {"Steps", quality.steps() + " of " + Figures.decimal(quality.timeStepS() * 1000, 3) + " ms"},
            {"Greatest Mach number", Figures.decimal(quality.greatestMach(), 3)},
            {"Java", provenance.javaVersion()},
            {"Date", provenance.date().toString()}};
        StringBuilder html = new StringBuilder("<h2>To compute this again</h2>\n<table>\n<tbody>\n");
        for (String[] row : rows) {
            html.append("<tr><th>").append(row[0]).append("</th><td>").append(Html.escape(row[1]))
                    .append("</td></tr>\n");
        }
        return html.append("</tbody>\n</table>\n").toString();
    }
}
