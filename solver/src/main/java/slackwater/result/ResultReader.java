package slackwater.result;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Doubt;
import slackwater.analysis.Reading;
import slackwater.analysis.Verdict;
import slackwater.field.Grid;
import slackwater.field.RunQuality;
import slackwater.scenario.Coral;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.scenario.SpeedRange;

/** Reads what {@link ResultJson} wrote. */
public final class ResultReader {
    private static final double M_PER_CM = 0.01;

    private final Path file;

    private ResultReader(Path file) {
        this.file = file;
    }

    /**
     * Reads a result.
     *
     * @param json the text of result.json
     * @param file where it comes from, for messages; the meshes of the scenario lie in its folder
     * @throws UnreadableResult where it is broken, of another format, or does not hold the scenario
     */
    public static KeptResult read(String json, Path file) throws UnreadableResult {
        return new ResultReader(file).read(json);
    }

    private KeptResult read(String json) throws UnreadableResult {
        JsonNode root = parsed(json);
        if (root.path("format").asInt() != ResultJson.FORMAT) {
            throw new UnreadableResult(file + ": found format " + root.path("format").asText("none") + ", must be "
                    + ResultJson.FORMAT + "; run the scenario again with this version");
        }
        JsonNode text = root.path("provenance").path("scenario_text");
        if (!text.isTextual()) {
            throw new UnreadableResult(file + ": does not hold the text of its scenario, an older version wrote it;"
                    + " run the scenario again");
        }
        Scenario scenario = scenario(text.asText());
        JsonNode corals = required(root, "corals");
        if (corals.size() != scenario.corals().size()) {
            throw new UnreadableResult(file + ": found " + corals.size() + " readings for "
                    + scenario.corals().size() + " corals, must be one each; run the scenario again");
        }
        List<CoralReading> readings = new ArrayList<>();
        for (int n = 0; n < corals.size(); n++) {
            readings.add(coral(corals.get(n), scenario.corals().get(n)));
        }
        return new KeptResult(scenario, text.asText(), verdict(root), required(root, "summary").asText(),
                List.copyOf(readings), quality(required(root, "run")), grid(required(root, "grid")));
    }

    private JsonNode parsed(String json) throws UnreadableResult {
        try {
            return new ObjectMapper().readTree(json);
        } catch (JsonProcessingException broken) {
            throw new UnreadableResult(file + ": is no whole JSON document (line "
                    + (broken.getLocation() == null ? "unknown" : broken.getLocation().getLineNr())
                    + "); run the scenario again");
        }
    }

    private Scenario scenario(String text) throws UnreadableResult {
        try {
            Path folder = file.toAbsolutePath().getParent();
            return ScenarioReader.read(text, "scenario in " + file.getFileName(), folder);
        } catch (ScenarioFaults faults) {
            throw new UnreadableResult(file + ": the scenario that it holds cannot be read\n" + faults.getMessage());
        }
    }

    private CoralReading coral(JsonNode node, Coral coral) throws UnreadableResult {
        Reading reading = new Reading(speed(node, "mean_speed_cm_per_s"), speed(node, "rms_speed_cm_per_s"),
                speed(node, "percentile_95_speed_cm_per_s"), speed(node, "standard_error_cm_per_s"),
                speed(node, "margin_95_cm_per_s"));
        double grid = speed(node, "grid_doubt_cm_per_s");
        Doubt doubt = new Doubt(reading.marginMPerS(),
                Double.isFinite(grid) ? OptionalDouble.of(grid) : OptionalDouble.empty(),
                speed(node, "pump_doubt_cm_per_s"));
        SpeedRange wanted = new SpeedRange(speed(node, "wanted_from_cm_per_s"), speed(node, "wanted_to_cm_per_s"),
                required(node, "wanted_source").asText());
        return new CoralReading(coral, reading, doubt, wanted, verdict(node), required(node, "sentence").asText());
    }

    private Verdict verdict(JsonNode node) throws UnreadableResult {
        String word = required(node, "verdict").asText();
        for (Verdict verdict : Verdict.values()) {
            if (verdict.name().toLowerCase(Locale.ROOT).equals(word)) {
                return verdict;
            }
        }
        throw new UnreadableResult(file + ": found verdict \"" + word + "\", which is none; run the scenario again");
    }

    private RunQuality quality(JsonNode run) throws UnreadableResult {
        return new RunQuality(required(run, "settled").asBoolean(), required(run, "remark").asText(),
                number(run, "spin_up_s"), number(run, "averaged_s"), number(run, "time_step_s"),
                required(run, "steps").asLong(), number(run, "greatest_mach"), number(run, "mass_drift_per_min"),
                number(run, "cell_updates_per_s"), number(run, "wall_time_s"));
    }

    private Grid grid(JsonNode grid) throws UnreadableResult {
        return new Grid(required(grid, "nx").asInt(), required(grid, "ny").asInt(), required(grid, "nz").asInt(),
                number(grid, "cell_size_cm") * M_PER_CM);
    }

    private double speed(JsonNode node, String key) throws UnreadableResult {
        return number(node, key) * M_PER_CM;
    }

    /** A number; what was not known is written as null and comes back as infinite. */
    private double number(JsonNode node, String key) throws UnreadableResult {
        JsonNode value = required(node, key);
        return value.isNull() ? Double.POSITIVE_INFINITY : value.asDouble();
    }

    private JsonNode required(JsonNode node, String key) throws UnreadableResult {
        if (!node.has(key)) {
            throw new UnreadableResult(file + ": has no \"" + key + "\" where one must be; run the scenario again");
        }
        return node.get(key);
    }
}
