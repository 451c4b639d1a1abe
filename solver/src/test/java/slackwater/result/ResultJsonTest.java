package slackwater.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.analysis.Assessor;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Evidence;
import slackwater.field.FlowStatistics;
import slackwater.field.ProbeSeries;
import slackwater.scenario.Scenario;

/** Read back by a parser other than the writer's. */
class ResultJsonTest {
    private final Scenario scenario = MadeUpTank.scenario();
    private final FlowStatistics flow = MadeUpTank.flow(scenario, 0.02);

    @Test
    void anIndependentReaderReadsItBack() {
        FlowResult result = MadeUpTank.result(scenario, flow);
        JsonObject root = read(result);
        assertEquals(scenario.name(), root.get("scenario").getAsString());
        assertEquals(result.assessment().verdict().name().toLowerCase(Locale.ROOT),
                root.get("verdict").getAsString());
        JsonArray corals = root.getAsJsonArray("corals");
        assertEquals(scenario.corals().size(), corals.size());
        for (int n = 0; n < corals.size(); n++) {
            CoralReading reading = result.assessment().corals().get(n);
            JsonObject coral = corals.get(n).getAsJsonObject();
            assertEquals(reading.coral().name(), coral.get("name").getAsString());
            assertEquals(reading.reading().meanMPerS() * 100, coral.get("mean_speed_cm_per_s").getAsDouble(), 1e-4);
            assertEquals(reading.interval().lowMPerS() * 100, coral.get("range_95_from_cm_per_s").getAsDouble(), 1e-4);
            assertEquals(reading.interval().highMPerS() * 100, coral.get("range_95_to_cm_per_s").getAsDouble(), 1e-4);
            assertTrue(coral.get("grid_doubt_cm_per_s").isJsonNull(), "one grid knows nothing of the cells");
            assertEquals(reading.sentence(), coral.get("sentence").getAsString());
        }
        JsonObject still = root.getAsJsonObject("still_water");
        assertEquals(result.assessment().stillWater().volumeM3() * 1000, still.get("volume_l").getAsDouble(), 1e-3);
        assertEquals(result.assessment().stillWater().regions().size(), still.getAsJsonArray("regions").size());
        assertTrue(root.getAsJsonObject("run").get("settled").getAsBoolean());
        assertEquals(result.provenance().scenarioSha256(),
                root.getAsJsonObject("provenance").get("scenario_sha256").getAsString());
        assertEquals("2026-01-01T00:00:00Z", root.getAsJsonObject("provenance").get("date").getAsString());
        assertEquals(60, root.getAsJsonObject("grid").get("nx").getAsInt());
        assertTrue(root.getAsJsonArray("speed_histogram").get(9).getAsJsonObject().get("to_cm_per_s").isJsonNull());
    }

    @Test
    void carriesWhatTheDoubtRestsOn() {
        JsonObject root = read(MadeUpTank.result(scenario, flow,
                new Evidence(Optional.of(MadeUpTank.flow(scenario, 0.04)), "", 0.2)));
        JsonObject confidence = root.getAsJsonObject("confidence");
        assertEquals(4, confidence.get("companion_cell_size_cm").getAsDouble(), 1e-9);
        assertEquals(0.2, confidence.get("pump_uncertainty_share").getAsDouble(), 1e-9);
        double typical = confidence.get("typical_grid_doubt_share").getAsDouble();
        root.getAsJsonArray("corals").forEach(node -> {
            JsonObject coral = node.getAsJsonObject();
            double mean = coral.get("mean_speed_cm_per_s").getAsDouble();
            assertTrue(coral.get("grid_doubt_cm_per_s").getAsDouble() >= 1.9599 * typical * mean, coral.toString());
        });
    }

    @Test
    void whatIsNotKnownIsNull() {
        List<ProbeSeries> one = MadeUpTank.series(scenario, flow).stream()
                .map(all -> new ProbeSeries(all.probe(), 0.1, all.speedMPerS().length, all.speedMPerS())).toList();
        FlowResult full = MadeUpTank.result(scenario, flow);
        FlowResult result = new FlowResult(full.provenance(), scenario, full.quality(),
                Assessor.assess(scenario, flow, one, full.quality()), full.grid());
        JsonObject coral = read(result).getAsJsonArray("corals").get(0).getAsJsonObject();
        assertTrue(coral.get("standard_error_cm_per_s").isJsonNull());
        assertEquals("marginal", coral.get("verdict").getAsString());
    }

    private static JsonObject read(FlowResult result) {
        return JsonParser.parseString(ResultJson.write(result)).getAsJsonObject();
    }
}
