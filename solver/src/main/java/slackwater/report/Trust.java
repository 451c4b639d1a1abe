package slackwater.report;

import java.util.ArrayList;
import java.util.List;
import slackwater.analysis.Figures;
import slackwater.field.RunQuality;
import slackwater.result.FlowResult;
import slackwater.result.Provenance;

/** How far the numbers can be trusted, and what it takes to compute them again. */
final class Trust {
    private static final double COARSEST_KNOWN_M = 0.022;
    private static final double COARSE_M = 0.015;
    private static final double TROUBLED_DRIFT = 1e-5;

    private Trust() {
    }

    static String of(FlowResult result) {
        RunQuality quality = result.quality();
        List<String> points = new ArrayList<>();
        points.add((quality.settled() ? "The readings settled. " : "The readings did NOT settle. ") + quality.remark());
        points.add("The first " + Figures.decimal(quality.spinUpS(), 0) + " s of water time were left out; the next "
                + Figures.decimal(quality.averagedS(), 0) + " s were averaged. The \u00b1 beside a reading covers only"
                + " the chance that is left after that, not the faults of the model.");
        points.add(grid(result.grid().cellSizeM()));
        points.add("Speeds are means of the water's speed at each moment, turbulence included; the speed of the mean"
                + " stream alone is lower, in such tanks by about a third.");
        points.add("A pump is known here only by its maker's flow and its outlet. A worn, dirty or generously rated one"
                + " delivers less, and every speed falls in step.");
        points.add("A jet aimed well away from the tank's length, breadth and height mixes too fast here: in it, far"
                + " from the pump, a reading may be a fifth to a third too low.");
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

    private static String grid(double cellSizeM) {
        String cells = "The water was cut into cells of " + Figures.plain(cellSizeM * 100) + " cm. ";
        if (cellSizeM > COARSEST_KNOWN_M) {
            return cells + "How far so coarse a grid errs has not been measured: more than the 15 to 30 % that speeds"
                    + " read low at 2 cm. Take it as a sketch.";
        }
        if (cellSizeM > COARSE_M) {
            return cells + "That is coarse: at 2 cm speeds read 15 to 30 % low, and single places are off by about a"
                    + " third of the mean speed. Good for sorting layouts, not for a last word.";
        }
        return cells + "At 1 cm, against a computation twice as fine, speeds read 5 to 15 % low and single places are"
                + " off by 15 to 20 % of the mean speed.";
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
