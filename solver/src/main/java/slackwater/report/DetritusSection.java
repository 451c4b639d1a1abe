package slackwater.report;

import java.util.List;
import slackwater.analysis.Assessment;
import slackwater.analysis.ClearanceWords;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Figures;
import slackwater.analysis.Leavings;
import slackwater.detritus.Clearance;
import slackwater.detritus.Fate;
import slackwater.detritus.Grain;
import slackwater.detritus.Place;
import slackwater.field.FlowStatistics;
import slackwater.result.FlowResult;

/** What the report says of sand, food and waste: how fast each coral is cleared, and where what is fed ends. */
final class DetritusSection {
    private DetritusSection() {
    }

    static String of(FlowResult result, FlowStatistics flow) {
        Assessment assessment = result.assessment();
        return assessment.leavings().map(leavings -> "<h2>Sand, food and waste</h2>\n" + clearances(assessment)
                + fates(leavings) + maps(leavings, result, flow) + basis(leavings)).orElse("");
    }

    private static String clearances(Assessment assessment) {
        if (assessment.corals().isEmpty()) {
            return "";
        }
        StringBuilder html = new StringBuilder("<h3>How fast a coral is cleared</h3>\n<table>\n<thead><tr>"
                + "<th>Coral</th>"
                + "<th>Food thrown on it: half gone</th><th>gone</th><th>Fine sand thrown on it: half gone</th>"
                + "<th>gone</th><th class=\"figure\">Drag: mean, gusts, Pa</th></tr></thead>\n<tbody>\n");
        for (CoralReading coral : assessment.corals()) {
            html.append("<tr><td>").append(Html.escape(coral.coral().name())).append("</td>");
            coral.clearances().forEach(clearance -> html.append("<td>").append(half(clearance)).append("</td><td>")
                    .append(ClearanceWords.range(clearance)).append("</td>"));
            html.append("<td class=\"figure\">").append(coral.clearances().isEmpty() ? ""
                    : Figures.decimal(coral.clearances().get(0).shearPa(), 2) + ", "
                    + Figures.decimal(coral.clearances().get(0).gustShearPa(), 2)).append("</td></tr>\n");
        }
        return html.append("</tbody>\n</table>\n<p class=\"source\">Spread over the coral and watched for ")
                .append(ClearanceWords.time(Clearance.WATCHED_S)).append("; gone means that 95 % has left it. In")
                .append(" brackets: the same with grains that cling half as hard, and twice as hard, which is how well")
                .append(" that is known, and more where the speed is in doubt. The grains do not feel each other,")
                .append(" so the amount does not matter; think of a pinch, or of the 50 mg/cm\u00b2 that corals were")
                .append(" tested with (Stafford-Smith &amp; Ormond 1992). The verdict of a plate counts both, that of")
                .append(" other corals food alone. What stays fails plating and small-polyp corals, which clean")
                .append(" themselves badly; large-polyp and soft ones it leaves Marginal. That 5 minutes are enough")
                .append(" time is common practice, no source.</p>\n").toString();
    }

    private static String half(Clearance clearance) {
        return clearance.likely().halfS().isPresent()
                ? ClearanceWords.time(clearance.likely().halfS().getAsDouble()) : "not in time";
    }

    private static String fates(Leavings leavings) {
        StringBuilder html = new StringBuilder("<h3>Where it goes</h3>\n<table>\n<thead><tr><th>What</th>"
                + "<th>After</th>");
        for (Place place : Place.values()) {
            html.append("<th class=\"figure\">").append(place.words()).append("</th>");
        }
        html.append("</tr></thead>\n<tbody>\n");
        for (Fate fate : leavings.litter().fates()) {
            for (Fate.Moment moment : fate.moments().stream().filter(DetritusSection::isShown).toList()) {
                html.append("<tr><td>").append(Html.escape(fate.grain().name() + " " + fate.from()))
                        .append("</td><td>").append(ClearanceWords.time(moment.timeS())).append("</td>");
                for (Place place : Place.values()) {
                    html.append("<td class=\"figure\">").append(Figures.percent(moment.at(place))).append("</td>");
                }
                html.append("</tr>\n");
            }
        }
        html.append("</tbody>\n</table>\n<ul>\n");
        for (int n = 0; n < leavings.heaps().size(); n++) {
            String what = leavings.litter().fates().get(n).grain().name();
            List<String> places = leavings.heaps().get(n).stream()
                    .map(heap -> heap.place() + " " + Figures.percent(heap.shareFraction())).toList();
            html.append("<li>").append(Html.escape(what + " lies " + (places.isEmpty() ? "nowhere for long"
                    : String.join("; ", places)))).append(".</li>\n");
        }
        return html.append("</ul>\n").toString();
    }

    /** Whole minutes. */
    private static boolean isShown(Fate.Moment moment) {
        return moment.timeS() > 0 && moment.timeS() % 60 == 0;
    }

    private static String maps(Leavings leavings, FlowResult result, FlowStatistics flow) {
        StringBuilder html = new StringBuilder();
        for (Fate fate : leavings.litter().fates()) {
            html.append(new DepositPicture(fate, result.scenario(), flow).draw());
        }
        return html.toString();
    }

    private static String basis(Leavings leavings) {
        StringBuilder html = new StringBuilder("<p class=\"source\">What the grains are like:</p>\n"
                + "<ul class=\"source\">\n");
        leavings.litter().drift().releases().stream().map(release -> release.grain()).distinct()
                .forEach(grain -> html.append("<li>").append(Html.escape(words(grain))).append("</li>\n"));
        return html.append("</ul>\n<p class=\"source\">They were followed through ")
                .append(Figures.decimal(leavings.litter().recordS(), 0))
                .append(" s of the computed water, played again and again.</p>\n").toString();
    }

    static String words(Grain grain) {
        return grain.name() + ": " + Figures.decimal(grain.sizeM() * 1000, 1) + " mm, sinks at "
                + Figures.decimal(grain.settlingMPerS() * 100, 1) + " cm/s, lifts from smooth ground, sand and broken"
                + " rock at " + Figures.decimal(grain.smoothPa(), 3) + ", " + Figures.decimal(grain.sandPa(), 3)
                + " and " + Figures.decimal(grain.rockPa(), 3) + " Pa; " + grain.basis() + ".";
    }
}
