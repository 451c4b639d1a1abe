package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.analysis.Evidence;
import slackwater.detritus.Clearance;
import slackwater.detritus.Litter;
import slackwater.detritus.Tracker;
import slackwater.detritus.Trials;
import slackwater.field.FlowRecorder;
import slackwater.field.FlowStatistics;
import slackwater.field.Snapshot;
import slackwater.result.FlowResult;
import slackwater.result.ResultJson;
import slackwater.scenario.Scenario;

/** What a result with grains says, in all its files; each read back by somebody else's reader. */
class DetritusReportTest {
    private static final Scenario SCENARIO = MadeUpTank.scenario();
    private static final FlowStatistics FLOW = MadeUpTank.flow(SCENARIO, 0.02);
    private static final Litter LITTER = litter();
    private static final FlowResult RESULT = MadeUpTank.result(SCENARIO, FLOW,
            new Evidence(Optional.empty(), "", 0, Optional.of(LITTER)));

    private static Litter litter() {
        FlowRecorder recorder = new FlowRecorder(FLOW.grid(), FLOW.fluid(), 0.2);
        float[] none = new float[FLOW.grid().cells()];
        assertTrue(recorder.wants(0.2));
        recorder.see(new Snapshot(0.2, FLOW.meanU(), FLOW.meanV(), FLOW.meanW(), FLOW.wallShear(), none, none));
        return Trials.make(SCENARIO, recorder.record().orElseThrow(), new Tracker.Chance(1, 2));
    }

    @Test
    void thePageTellsHowFastEachCoralIsClearedAndWhereTheRestLies() {
        Document page = Jsoup.parse(ReportHtml.write(RESULT, FLOW));
        assertTrue(page.select("h2").eachText().contains("Sand, food and waste"));
        String words = page.text();
        SCENARIO.corals().forEach(coral -> assertTrue(page.select("table").get(1).text().contains(coral.name())));
        for (String must : List.of("How fast a coral is cleared", "Where it goes", "in the filter", "assumed",
                "common practice, no source", "Stafford-Smith & Ormond 1992")) {
            assertTrue(words.contains(must), must);
        }
        assertEquals(2, page.select("svg path.rock-line").size(), "a map of food, and one of waste");
        Set<String> ids = new HashSet<>();
        page.select("[id]").forEach(element -> assertTrue(ids.add(element.id()), element.id()));
    }

    @Test
    void theVerdictIsTheWorseOfSpeedAndClearing() {
        FlowResult speed = MadeUpTank.result(SCENARIO, FLOW);
        for (int n = 0; n < SCENARIO.corals().size(); n++) {
            var with = RESULT.assessment().corals().get(n);
            assertTrue(with.verdict().compareTo(speed.assessment().corals().get(n).verdict()) >= 0);
            assertTrue(with.sentence().contains("food on it"), with.sentence());
            assertFalse(with.sentence().contains("carry off"), "the grains say so, or not");
            assertEquals(2, with.clearances().size());
        }
        assertTrue(speed.assessment().leavings().isEmpty());
    }

    @Test
    void theJsonCarriesEveryTryAndEveryShare() {
        JsonObject root = JsonParser.parseString(ResultJson.write(RESULT)).getAsJsonObject();
        JsonArray cleared = root.getAsJsonArray("corals").get(0).getAsJsonObject().getAsJsonArray("cleared_of");
        assertEquals(2, cleared.size());
        Clearance food = LITTER.clearances().get(0);
        JsonObject first = cleared.get(0).getAsJsonObject();
        assertEquals("food", first.get("what").getAsString());
        assertEquals(3, first.getAsJsonArray("tries").size());
        assertEquals(food.courses().get(1).leftFraction(),
                first.getAsJsonArray("tries").get(1).getAsJsonObject().get("left_share").getAsDouble(), 1e-6);
        JsonArray fates = root.getAsJsonObject("detritus").getAsJsonArray("fates");
        assertEquals(2, fates.size());
        fates.forEach(fate -> fate.getAsJsonObject().getAsJsonArray("shares").forEach(moment -> {
            double all = 0;
            for (String place : List.of("water", "sand", "rock", "glass", "coral", "filter", "pump")) {
                all += moment.getAsJsonObject().get(place).getAsDouble();
            }
            assertEquals(1, all, 1e-5);
        }));
        assertFalse(root.getAsJsonObject("detritus").getAsJsonArray("materials").isEmpty());
    }

    @Test
    void theTableForSpreadsheetsCarriesThem() throws Exception {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        List<CSVRecord> rows = CSVParser.parse(new StringReader(CoralsCsv.write(RESULT)), format).getRecords();
        for (int n = 0; n < rows.size(); n++) {
            Clearance sand = LITTER.of(n).get(1);
            assertEquals(sand.outcome().name(), rows.get(n).get("sand_outcome").toUpperCase(Locale.ROOT));
            assertEquals(sand.likely().leftFraction(), Double.parseDouble(rows.get(n).get("sand_left_share")), 1e-3);
        }
    }

    @Test
    void theTerminalStaysNarrow() {
        String table = TerminalTable.of(RESULT);
        assertTrue(table.contains("fine sand"), table);
        assertTrue(table.contains("Food fed all over the surface, after 5 min: "), table);
        assertTrue(table.lines().allMatch(line -> line.length() <= 100), table);
    }
}
