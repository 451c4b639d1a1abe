package slackwater.search;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Spliterators;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;

/** A trial as one line of JSON, in SI units and radians, and back again to the last digit. */
final class TrialJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private TrialJson() {
    }

    static String line(Trial trial) {
        ObjectNode node = JSON.createObjectNode();
        node.put("key", trial.key()).put("stage", trial.stage().word()).put("way", trial.way())
                .put("wall_s", trial.wallS());
        ArrayNode pumps = node.putArray("pumps");
        trial.pumps().forEach(pump -> write(pump, pumps.addObject()));
        if (trial.outcome() instanceof Outcome.Failed failed) {
            node.put("failed", failed.why());
        } else if (trial.outcome() instanceof Outcome.Read read) {
            write(read.finding(), node.putObject("found"));
        }
        try {
            return JSON.writeValueAsString(node);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The trial of a line; empty where the line is torn, as the last one is after a kill. */
    static Optional<Trial> trial(String line) {
        try {
            JsonNode node = JSON.readTree(line);
            Outcome outcome = node.has("failed") ? new Outcome.Failed(node.required("failed").asText())
                    : new Outcome.Read(finding(node.required("found")));
            return Optional.of(new Trial(node.required("key").asText(),
                    Stage.meant(node.required("stage").asText()), node.required("way").asText(),
                    all(node.required("pumps")).map(TrialJson::pump).toList(), outcome,
                    node.required("wall_s").asDouble()));
        } catch (JsonProcessingException | IllegalArgumentException torn) {
            return Optional.empty();
        }
    }

    private static void write(Pump pump, ObjectNode node) {
        node.put("name", pump.name()).put("flow_m3_per_s", pump.flowM3PerS());
        ArrayNode outlet = node.putArray("outlet_m");
        if (pump.outlet() instanceof Outlet.Slot slot) {
            outlet.add(slot.widthM()).add(slot.heightM());
        } else {
            outlet.add(((Outlet.Round) pump.outlet()).diameterM());
        }
        node.putArray("at_m").add(pump.atM().x()).add(pump.atM().y()).add(pump.atM().z());
        node.put("yaw_rad", pump.yawRad()).put("pitch_rad", pump.pitchRad()).put("roll_rad", pump.rollRad())
                .put("output", pump.outputFraction()).put("fouling", pump.foulingFraction())
                .put("thrust_factor", pump.thrustFactor()).put("pattern", pump.pattern().kind().name());
        node.putArray("cycle").add(pump.pattern().periodS()).add(pump.pattern().lowFraction())
                .add(pump.pattern().phaseFraction());
    }

    private static Pump pump(JsonNode node) {
        List<Double> outlet = numbers(node.required("outlet_m"));
        List<Double> at = numbers(node.required("at_m"));
        List<Double> cycle = numbers(node.required("cycle"));
        return new Pump(node.required("name").asText(), node.required("flow_m3_per_s").asDouble(),
                outlet.size() == 1 ? new Outlet.Round(outlet.get(0)) : new Outlet.Slot(outlet.get(0), outlet.get(1)),
                new Vec3(at.get(0), at.get(1), at.get(2)), node.required("yaw_rad").asDouble(),
                node.required("pitch_rad").asDouble(), node.required("roll_rad").asDouble(),
                node.required("output").asDouble(), node.required("fouling").asDouble(),
                node.required("thrust_factor").asDouble(),
                new Pattern(Pattern.Kind.valueOf(node.required("pattern").asText()), cycle.get(0), cycle.get(1),
                        cycle.get(2)));
    }

    private static void write(Finding finding, ObjectNode node) {
        ArrayNode corals = node.putArray("corals");
        for (CoralFinding coral : finding.corals()) {
            corals.addObject().put("name", coral.name()).put("mean_m_per_s", coral.meanMPerS())
                    .put("low_m_per_s", coral.lowMPerS()).put("high_m_per_s", coral.highMPerS())
                    .put("wanted_low_m_per_s", coral.wantedLowMPerS())
                    .put("wanted_high_m_per_s", coral.wantedHighMPerS()).put("verdict", coral.verdict().name())
                    .put("clearing", coral.clearing().name());
        }
        node.put("still_share", finding.stillShareFraction()).put("strong_share", finding.strongShareFraction())
                .put("still_m3", finding.stillM3()).put("stillest", finding.stillest())
                .put("sand", finding.sandFraction()).put("settled", finding.settled());
    }

    private static Finding finding(JsonNode node) {
        return new Finding(all(node.required("corals")).map(TrialJson::coral).toList(),
                node.required("still_share").asDouble(), node.required("strong_share").asDouble(),
                node.required("still_m3").asDouble(), node.required("stillest").asText(),
                node.required("sand").asDouble(), node.required("settled").asBoolean());
    }

    private static CoralFinding coral(JsonNode node) {
        return new CoralFinding(node.required("name").asText(), node.required("mean_m_per_s").asDouble(),
                node.required("low_m_per_s").asDouble(), node.required("high_m_per_s").asDouble(),
                node.required("wanted_low_m_per_s").asDouble(), node.required("wanted_high_m_per_s").asDouble(),
                Verdict.valueOf(node.required("verdict").asText()),
                Verdict.valueOf(node.required("clearing").asText()));
    }

    private static List<Double> numbers(JsonNode array) {
        List<Double> numbers = new ArrayList<>();
        array.forEach(number -> numbers.add(number.asDouble()));
        if (numbers.isEmpty()) {
            throw new IllegalArgumentException("no numbers");
        }
        return numbers;
    }

    private static Stream<JsonNode> all(JsonNode array) {
        return StreamSupport.stream(Spliterators.spliterator(array.iterator(), array.size(), 0), false);
    }
}
