package slackwater.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import slackwater.analysis.Assessment;
import slackwater.analysis.Figures;
import slackwater.analysis.SandBed;
import slackwater.analysis.Sloshing;
import slackwater.analysis.SpeedHistogram;
import slackwater.analysis.StillRegion;
import slackwater.analysis.StillWater;
import slackwater.analysis.Turnover;
import slackwater.field.FlowStatistics;
import slackwater.result.FlowResult;
import slackwater.scenario.Scenario;

/** What the report says of the tank as a whole: still water, sand, surface, spread of speeds, turnover. */
final class Findings {
    private static final int LISTED = 10;
    private static final double COLUMN_UNITS = 52;
    private static final double TALLEST_UNITS = 150;

    private Findings() {
    }

    static String of(FlowResult result, FlowStatistics flow) {
        Assessment assessment = result.assessment();
        return stillWater(assessment.stillWater())
                + Pictures.ofStillWater(result.scenario(), flow, assessment.stillWater())
                + sand(assessment) + surface(assessment) + waves(result.scenario())
                + histogram(assessment.histogram()) + turnover(assessment);
    }

    private static String stillWater(StillWater still) {
        StringBuilder html = new StringBuilder("<h2>Still water</h2>\n<p>");
        html.append(still.volumeM3() == 0 ? "No water is likely to stand still."
                : "Likely still: " + Figures.percent(still.shareFraction()) + " of the water, "
                        + Figures.litres(still.volumeM3()) + " litres.");
        html.append(" The edge of still water is never sharp: surely still are ")
                .append(Figures.litres(still.surelyM3())).append(" litres, possibly still ")
                .append(Figures.litres(still.possiblyM3())).append("; weighed by their chances, ")
                .append(Figures.litres(still.expectedM3())).append(".</p>\n");
        List<StillRegion> regions = still.regions();
        if (!regions.isEmpty()) {
            html.append("<table>\n<thead><tr><th>Where</th><th class=\"figure\">Litres</th>"
                    + "<th class=\"figure\">Share of the water</th><th class=\"figure\">Mean speed, cm/s</th></tr>"
                    + "</thead>\n<tbody>\n");
            regions.stream().limit(LISTED).forEach(region -> html.append("<tr><td>")
                    .append(Html.escape(region.place())).append("</td><td class=\"figure\">")
                    .append(Figures.litres(region.volumeM3())).append("</td><td class=\"figure\">")
                    .append(Figures.percent(region.shareFraction())).append("</td><td class=\"figure\">")
                    .append(Figures.cmPerS(region.meanMPerS())).append("</td></tr>\n"));
            html.append("</tbody>\n</table>\n");
        }
        html.append(rest(still));
        return html.append("<p class=\"source\">Still: mean speed below 2 cm/s and gusts below 5 cm/s. Surely: with a"
                        + " chance of more than 95 %; likely: more than 50 %; possibly: more than 5 %. ")
                .append(StillWater.SOURCE).append("</p>\n").toString();
    }

    private static String rest(StillWater still) {
        double further = still.regions().stream().skip(LISTED).mapToDouble(StillRegion::volumeM3).sum();
        long count = Math.max(0, still.regions().size() - LISTED) + still.pockets();
        return count == 0 ? "" : "<p>Beside " + (still.regions().isEmpty() ? "moving water" : "these") + ", " + count
                + (count == 1 ? " small pocket" : " smaller pockets") + " with "
                + Figures.litres(further + still.scatteredM3()) + " litres in all.</p>\n";
    }

    private static String sand(Assessment assessment) {
        return "<h2>Sand</h2>\n" + assessment.sandBed().map(Findings::sand)
                .orElse("<p>No open sand to judge.</p>\n");
    }

    private static String sand(SandBed sand) {
        return "<p>" + Html.escape(sand.sentence()) + " The mean over the open sand is "
                + Figures.cmPerS(sand.meanMPerS()) + " cm/s. "
                + (sand.isWarning() ? Figures.percent(sand.warnedShareFraction())
                + " of the open sand sees gusts above four fifths of that speed. " : "")
                + "On the sand itself gusts drag with up to " + Figures.decimal(sand.shear().gustPa(), 2)
                + " Pa, and it begins to move at " + Figures.decimal(sand.shear().thresholdPa(), 2) + " Pa: "
                + Figures.percent(sand.shear().blownShareFraction()) + " of it is blown about.</p>\n"
                + "<p class=\"source\">Read " + Figures.plain(sand.heightM() * 100) + " cm above the sand. Threshold:"
                + " Soulsby &amp; Whitehouse 1997 for solid carbonate grains of 2830 kg/m\u00b3, carried up by the law"
                + " of the wall; measured thresholds scatter 20 to 30 % about it, hence a warning from four fifths on."
                + " Light, platy grains move sooner.</p>\n";
    }

    private static String surface(Assessment assessment) {
        return "<h2>Surface</h2>\n<p>The surface moves at " + Figures.cmPerS(assessment.surface().meanMPerS())
                + " cm/s on the whole; " + Figures.percent(assessment.surface().stillShareFraction())
                + " of it is slower than 2 cm/s. A still surface gathers a film.</p>\n"
                + "<p class=\"source\">The limit of 2 cm/s and the film: common practice, no source.</p>\n";
    }

    /** Nothing where no pump pulses in time with a wave of the tank. */
    private static String waves(Scenario scenario) {
        List<String> warnings = Sloshing.warnings(scenario);
        return warnings.isEmpty() ? "" : "<h2>Waves</h2>\n" + warnings.stream()
                .map(warning -> "<p>" + Html.escape(warning) + "</p>\n").collect(Collectors.joining())
                + "<p class=\"source\">" + Html.escape(Sloshing.NOTE) + "</p>\n";
    }

    private static String histogram(SpeedHistogram histogram) {
        List<SpeedHistogram.Bin> bins = histogram.bins();
        double most = bins.stream().mapToDouble(SpeedHistogram.Bin::shareFraction).max().orElse(1);
        double width = 10 + COLUMN_UNITS * bins.size();
        StringBuilder svg = new StringBuilder(String.format(Locale.ROOT, "<svg role=\"img\" aria-label=\"Share of the"
                + " water in each class of speed\" width=\"%.0f\" viewBox=\"0 0 %.0f 220\"><defs><pattern"
                + " id=\"column-hatch\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\""
                + " patternTransform=\"rotate(45)\"><path d=\"M0 0V6\" stroke=\"#6d7f8a\" stroke-width=\"2\"/>"
                + "</pattern></defs>", width, width));
        for (int n = 0; n < bins.size(); n++) {
            SpeedHistogram.Bin bin = bins.get(n);
            double tall = most == 0 ? 0 : bin.shareFraction() / most * TALLEST_UNITS;
            double x = 8 + n * COLUMN_UNITS;
            String share = Figures.percent(bin.shareFraction()).replace("below ", "&lt;");
            svg.append(String.format(Locale.ROOT, "<rect class=\"column%s\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\""
                            + " height=\"%.1f\"/><text class=\"number\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%s"
                            + "</text><text class=\"number\" x=\"%.1f\" y=\"186\" text-anchor=\"middle\">%s</text>",
                    bin.toMPerS() <= StillWater.MEAN_LIMIT_M_PER_S ? " slow" : "", x, 170 - tall, COLUMN_UNITS - 8,
                    tall, x + COLUMN_UNITS / 2 - 4, 164 - tall, share, x + COLUMN_UNITS / 2 - 4, range(bin)));
        }
        svg.append(String.format(Locale.ROOT, "<path class=\"tick\" d=\"M4 170H%.0f\"/><text class=\"axis\" x=\"8\""
                + " y=\"208\">mean speed, cm/s</text></svg>\n", width));
        return "<h2>How fast how much of the water moves</h2>\n<figure>\n" + svg
                + "<figcaption>Share of the water's volume in each class of mean speed; hatched: slower than 2 cm/s."
                + "</figcaption>\n</figure>\n";
    }

    private static String range(SpeedHistogram.Bin bin) {
        return Double.isInfinite(bin.toMPerS()) ? Figures.limitCmPerS(bin.fromMPerS()) + "+"
                : Figures.limitCmPerS(bin.fromMPerS()) + "\u2013" + Figures.limitCmPerS(bin.toMPerS());
    }

    private static String turnover(Assessment assessment) {
        Turnover turnover = assessment.turnover();
        String fromSump = turnover.returnPerHour() == 0 ? ""
                : ", the return " + Figures.plain(turnover.returnPerHour()) + " times";
        return "<h2>Turnover</h2>\n<p>The circulation pumps are rated to move the "
                + Figures.litres(assessment.waterVolumeM3()) + " litres of water "
                + Figures.plain(turnover.pumpsPerHour()) + " times an hour" + fromSump + ".</p>\n<p class=\"source\">"
                + Turnover.NOTE + "</p>\n";
    }
}
