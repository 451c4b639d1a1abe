package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.analysis.Assessor;
import slackwater.analysis.Evidence;
import slackwater.analysis.Figures;
import slackwater.field.FlowStatistics;
import slackwater.field.RunQuality;
import slackwater.geometry.Vec3;
import slackwater.result.FlowResult;
import slackwater.result.Provenance;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;

class ReportHtmlTest {
    private static final String EVIL = "\"><script>alert(1)</script><img src=x onerror='alert(2)'>&lt;";
    private final Scenario scenario = MadeUpTank.scenario();
    private final FlowStatistics flow = MadeUpTank.flow(scenario, 0.02);
    private final Document page = Jsoup.parse(ReportHtml.write(MadeUpTank.result(scenario, flow), flow));

    @Test
    void needsNothingFromElsewhere() {
        assertEquals(0, page.select("script, link, iframe, object, embed, base, form").size());
        for (Element element : page.getAllElements()) {
            element.attributes().forEach(attribute -> {
                String value = attribute.getValue();
                boolean isAddress = Set.of("src", "href", "xlink:href", "data", "action").contains(attribute.getKey());
                assertTrue(!isAddress || value.startsWith("data:image/png;base64,"), value);
                assertFalse(attribute.getKey().startsWith("on"), attribute.getKey());
                assertFalse(value.contains("://"), value);
            });
        }
        assertFalse(page.select("style").html().contains("url(h"));
        assertFalse(page.select("style").html().contains("@import"));
        assertTrue(page.select("meta[http-equiv=Content-Security-Policy]").attr("content")
                .startsWith("default-src 'none'"));
    }

    @Test
    void saysTheVerdictFirstInAWord() {
        assertEquals("Terrace <reef>, 120 cm & \"made up\"", page.select("h1").text());
        assertEquals("\u2717 Fail", page.select(".verdict strong").text().replace('\u00a0', ' '));
        assertEquals(4, page.select("table").first().select("tbody tr").size());
        assertTrue(page.select("h2").eachText().containsAll(List.of("Corals", "Pictures", "Still water", "Sand",
                "Surface", "Turnover", "How far to trust this", "Before you change anything",
                "To compute this again")));
    }

    @Test
    void eachPictureCarriesItsImageScaleAndWords() throws IOException {
        assertEquals(7, page.select("figure svg").size());
        assertEquals(6, page.select("svg image").size());
        for (Element image : page.select("svg image")) {
            String data = image.attr("href").substring("data:image/png;base64,".length());
            assertTrue(ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(data))).getWidth() > 100);
            List<String> words = image.parents().select("svg").first().select("text").eachText();
            assertTrue(words.containsAll(List.of("10 cm", "1", "2", "3", "4")), words.toString());
            assertTrue(words.contains("cm/s") || words.containsAll(List.of("%", "25", "50", "75")), words.toString());
        }
    }

    @Test
    void noTwoElementsShareAnId() {
        Set<String> ids = new HashSet<>();
        page.select("[id]").forEach(element -> assertTrue(ids.add(element.id()), element.id()));
    }

    @Test
    void noUsersWordBecomesMarkup() {
        Scenario evil = new Scenario(EVIL, scenario.tank(),
                List.of(new Rock(EVIL, scenario.rocks().get(0).solid()), scenario.rocks().get(1)),
                List.of(MadeUpTank.pump(EVIL, new Vec3(0.04, 0.25, 0.38), 90, 0, 0.8)), Optional.empty(),
                Optional.empty(), List.of(new Coral(EVIL, CoralGroup.SOFT, new Vec3(0.6, 0.2, 0.1), new Vec3(0, 0, 1),
                0.1, Optional.of(new SpeedRange(0.4, 0.5, EVIL)))));
        RunQuality quality = new RunQuality(true, EVIL, 1, 1, 1, 1, 0.1, 1, 1, 1);
        Provenance plain = MadeUpTank.result(scenario, flow).provenance();
        Provenance provenance = new Provenance(EVIL, EVIL, EVIL, EVIL, 0.02, 1, EVIL, EVIL, 1, EVIL, plain.date());
        FlowResult result = new FlowResult(provenance, evil, quality,
                Assessor.assess(evil, flow, MadeUpTank.series(evil, flow), quality), flow.grid());
        Document attacked = Jsoup.parse(ReportHtml.write(result, flow));
        assertEquals(0, attacked.select("script, img, [onerror]").size());
        assertEquals(EVIL, attacked.select("h1").text());
        assertTrue(attacked.select("svg title").eachText().contains(EVIL));
        assertTrue(attacked.select("table").first().text().contains(EVIL));
    }

    @Test
    void tellsEachRangeWhatItIsMadeOfAndWhatItLacks() {
        Evidence evidence = new Evidence(Optional.of(MadeUpTank.flow(scenario, 0.04)), EVIL, 0.2);
        FlowResult result = MadeUpTank.result(scenario, flow, evidence);
        String words = Jsoup.parse(ReportHtml.write(result, flow)).text().replace('\u00a0', ' ');
        result.assessment().corals().forEach(coral -> assertTrue(words.contains(
                Figures.cmPerS(coral.reading().meanMPerS()) + " (" + Figures.interval(coral.interval()) + ")"), words));
        assertTrue(words.contains(", cells \u00b1 ") && words.contains(", pumps \u00b1 "), words);
        assertTrue(words.contains("also computed with cells of 4 cm") && words.contains(EVIL), words);
        assertFalse(page.text().contains(", cells \u00b1") || page.text().contains(", pumps \u00b1"));
        assertTrue(page.text().contains("How much their size matters was not computed"));
    }

    /** Views stand on the page as data, since it may load nothing, with their words for those who cannot see them. */
    @Test
    void viewsOfTheTankStandOnThePage() {
        byte[] png = Png.encode(2, 1, new byte[] {1, 2, 3, 4, 5, 6});
        Document with = Jsoup.parse(ReportHtml.write(MadeUpTank.result(scenario, flow), flow,
                new Artwork(List.of(new Artwork.View(png, 640, EVIL)), "Views drawn by hand.")));
        assertEquals(EVIL, with.select("figure img").attr("alt"));
        assertEquals("data:image/png;base64," + Base64.getEncoder().encodeToString(png),
                with.select("figure img").attr("src"));
        assertTrue(with.text().contains("Views drawn by hand."));
        assertEquals(0, page.select("img").size());
        assertTrue(page.text().contains("No views of the tank in space"));
    }

    @Test
    void withoutCoralsItSaysSo() {
        Scenario bare = MadeUpTank.with(scenario, List.of());
        Document without = Jsoup.parse(ReportHtml.write(MadeUpTank.result(bare, flow), flow));
        assertTrue(without.text().contains("names no corals, so there is no verdict"));
        assertEquals(7, without.select("figure svg").size());
    }

    @Test
    void replacesControlCharacters() {
        assertEquals("a\ufffdb\n&amp;", Html.escape("a\u0007b\n&"));
    }
}
