package slackwater.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import slackwater.analysis.Assessment;
import slackwater.analysis.Verdict;
import slackwater.field.FlowStatistics;
import slackwater.result.FlowResult;

/**
 * The report as one page of HTML that needs nothing else: no script, no font, no picture from elsewhere, and a content
 * security policy that says so.
 */
final class ReportHtml {
    private ReportHtml() {
    }

    static String write(FlowResult result, FlowStatistics flow) {
        return write(result, flow, Artist.NONE.draw(result, flow));
    }

    static String write(FlowResult result, FlowStatistics flow, Artwork artwork) {
        String title = Html.escape(result.scenario().name());
        return head(result.scenario().name() + " - what the water does")
                + "<h1>" + title + "</h1>\n"
                + "<p class=\"soft\">What the water does in this tank, as computed. These are estimates: see"
                + " \u201cHow far to trust this\u201d below.</p>\n"
                + verdict(result.assessment())
                + CoralTable.of(result)
                + Views.of(artwork)
                + Pictures.of(result.scenario(), flow, result.assessment().stillWater())
                + DetritusSection.of(result, flow)
                + Findings.of(result, flow)
                + Trust.of(result)
                + Cautions.html()
                + Trust.provenance(result)
                + "</body>\n</html>\n";
    }

    /** Everything up to the body's content. */
    static String head(String title) {
        return """
                <!DOCTYPE html>
                <html lang="en-GB">
                <head>
                <meta charset="utf-8">
                <meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; \
                style-src 'unsafe-inline'">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                """
                + "<title>" + Html.escape(title) + "</title>\n"
                + "<style>\n" + style() + "</style>\n</head>\n<body>\n";
    }

    private static String verdict(Assessment assessment) {
        return "<div class=\"verdict " + className(assessment.verdict()) + "\"><strong>" + mark(assessment.verdict())
                + "</strong><span>" + Html.escape(assessment.summary()) + "</span></div>\n";
    }

    /** A verdict as sign and word, so that it needs no colour. */
    static String mark(Verdict verdict) {
        return verdict.symbol() + "\u00a0" + verdict.word();
    }

    private static String className(Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT);
    }

    private static String style() {
        try (InputStream css = ReportHtml.class.getResourceAsStream("report.css")) {
            return new String(css.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the style sheet is part of the program", e);
        }
    }
}
