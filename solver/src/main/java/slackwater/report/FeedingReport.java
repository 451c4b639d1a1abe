package slackwater.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slackwater.analysis.ClearanceWords;
import slackwater.analysis.Figures;
import slackwater.analysis.Leavings;
import slackwater.detritus.Drift;
import slackwater.detritus.Fate;
import slackwater.detritus.Feeding;
import slackwater.detritus.Place;
import slackwater.field.FlowStatistics;
import slackwater.scenario.Scenario;

/**
 * Where a feeding goes, for people and for programs.
 *
 * @param stillShares share of it in likely still water, at each time of the fate
 */
public record FeedingReport(Scenario scenario, FlowStatistics flow, Feeding feeding, List<Double> stillShares) {
    public static final List<String> FILES = List.of("feed.html", "feed.csv", "grains.vtp");
    private static final double CM_PER_M = 100;
    private static final double G_PER_KG = 1000;

    /** One line of the table: a name, and a share for each time. */
    private record Line(String name, List<Double> shares) {
    }

    /** The table for the terminal, with a line end after each line. */
    public String table() {
        StringBuilder table = new StringBuilder(Html.shortened(heading(), 99)).append('\n')
                .append(String.format(Locale.ROOT, "%-38s", ""));
        feeding.fate().moments().forEach(moment -> table.append(String.format(Locale.ROOT, "%20s",
                "after " + ClearanceWords.time(moment.timeS()))));
        table.append('\n');
        for (Line line : lines()) {
            table.append(String.format(Locale.ROOT, "%-38s", Html.shortened(TerminalTable.printable(line.name()), 38)));
            line.shares().forEach(share -> table.append(String.format(Locale.ROOT, "%20s", cell(share))));
            table.append('\n');
        }
        return table.append(TerminalTable.wrapped(places())).toString();
    }

    /**
     * Writes the files into a folder, which is made if need be; none takes its place before all are complete.
     *
     * @throws NotWrittenException if it cannot be written
     */
    public void write(Path directory) {
        try {
            Files.createDirectories(directory);
            try (PendingFiles files = new PendingFiles(directory)) {
                files.add(FILES.get(0), out -> text(out, html()));
                files.add(FILES.get(1), out -> text(out, csv()));
                Drift drift = feeding.drift();
                files.add(FILES.get(2), out -> VtkGrains.write(drift.scenes().get(drift.scenes().size() - 1), drift,
                        out));
                files.commit();
            }
        } catch (IOException e) {
            throw new NotWrittenException(directory, e);
        }
    }

    private static void text(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private String heading() {
        return Figures.plain(feeding.massKg() * G_PER_KG) + " g of " + feeding.fate().grain().name() + " at x "
                + Figures.plain(feeding.atM().x() * CM_PER_M) + ", y " + Figures.plain(feeding.atM().y() * CM_PER_M)
                + ", z " + Figures.plain(feeding.atM().z() * CM_PER_M) + " cm";
    }

    private String cell(double share) {
        return String.format(Locale.ROOT, "%9s %7.2f g", Figures.percent(share), share * feeding.massKg() * G_PER_KG);
    }

    private List<Line> lines() {
        List<Fate.Moment> moments = feeding.fate().moments();
        List<Line> lines = new ArrayList<>();
        for (Place place : Place.values()) {
            if (moments.stream().allMatch(moment -> moment.at(place) == 0)) {
                continue;
            }
            lines.add(new Line(place.words(), moments.stream().map(moment -> moment.at(place)).toList()));
            for (int coral = 0; coral < scenario.corals().size() && place == Place.CORAL; coral++) {
                int n = coral;
                if (moments.stream().anyMatch(moment -> moment.onCoral()[n] > 0)) {
                    lines.add(new Line("  " + scenario.corals().get(n).name(),
                            moments.stream().map(moment -> moment.onCoral()[n]).toList()));
                }
            }
        }
        lines.add(new Line("of all this in still corners", stillShares));
        return lines;
    }

    private String places() {
        List<String> places = Leavings.heaps(feeding.fate(), scenario, flow.grid()).stream()
                .map(heap -> heap.place() + " " + Figures.percent(heap.shareFraction())).toList();
        return places.isEmpty() ? "Nothing lies anywhere for long."
                : "What lies, lies most " + String.join("; ", places) + ".";
    }

    private String csv() {
        StringBuilder csv = new StringBuilder("time_s");
        for (Place place : Place.values()) {
            csv.append(',').append(place.name().toLowerCase(Locale.ROOT)).append("_share");
        }
        csv.append("\r\n");
        for (int time = 0; time < feeding.drift().census().times(); time++) {
            csv.append(Figures.decimal(time * feeding.drift().census().everyS(), 0));
            for (Place place : Place.values()) {
                csv.append(',').append(Figures.decimal((double) feeding.drift().census().count(time, 0, place)
                        / feeding.fate().grains(), 4));
            }
            csv.append("\r\n");
        }
        return csv.toString();
    }

    private String html() {
        StringBuilder html = new StringBuilder(ReportHtml.head(scenario.name() + " - feeding"));
        html.append("<h1>").append(Html.escape(scenario.name())).append("</h1>\n<p>")
                .append(Html.escape(heading())).append(".</p>\n<table>\n<thead><tr><th></th>");
        feeding.fate().moments().forEach(moment -> html.append("<th class=\"figure\">after ")
                .append(ClearanceWords.time(moment.timeS())).append("</th>"));
        html.append("</tr></thead>\n<tbody>\n");
        for (Line line : lines()) {
            html.append("<tr><td>").append(Html.escape(line.name())).append("</td>");
            line.shares().forEach(share -> html.append("<td class=\"figure\">").append(cell(share)).append("</td>"));
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n<p>").append(Html.escape(places())).append("</p>\n")
                .append(new DepositPicture(feeding.fate(), scenario, flow).draw())
                .append("<p class=\"source\">").append(Html.escape(DetritusSection.words(feeding.fate().grain())))
                .append(" Computed as ").append(feeding.fate().grains()).append(" grains that do not feel each other;")
                .append(" an estimate, as everything here.</p>\n</body>\n</html>\n");
        return html.toString();
    }
}
