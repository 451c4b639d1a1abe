package slackwater.result;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import slackwater.analysis.Assessment;
import slackwater.analysis.Confidence;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.CoralReading;
import slackwater.analysis.SandBed;
import slackwater.analysis.SpeedHistogram;
import slackwater.analysis.StillRegion;
import slackwater.analysis.StillWater;
import slackwater.analysis.Verdict;
import slackwater.field.Grid;
import slackwater.field.RunQuality;
import slackwater.geometry.Vec3;

/** A result as JSON (RFC 8259) for other programs; each key carries its unit. */
public final class ResultJson {
    /** Counts up when a key changes its meaning or goes. */
    static final int FORMAT = 3;
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final double CM_PER_M = 100;
    private static final double LITRES_PER_M3 = 1000;

    private ResultJson() {
    }

    /** The whole document. Numbers that are not known (a standard error of a single batch) are null. */
    public static String write(FlowResult result) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("format", FORMAT);
        root.put("scenario", result.scenario().name());
        Assessment assessment = result.assessment();
        root.put("verdict", word(assessment.verdict()));
        root.put("summary", assessment.summary());
        ArrayNode corals = root.putArray("corals");
        assessment.corals().forEach(reading -> coral(corals.addObject(), reading));
        stillWater(root.putObject("still_water"), assessment.stillWater());
        assessment.sandBed().ifPresent(sand -> sandBed(root.putObject("sand_bed"), sand));
        ObjectNode surface = root.putObject("surface");
        number(surface, "mean_speed_cm_per_s", assessment.surface().meanMPerS() * CM_PER_M);
        number(surface, "still_share", assessment.surface().stillShareFraction());
        ArrayNode bins = root.putArray("speed_histogram");
        assessment.histogram().bins().forEach(bin -> bin(bins.addObject(), bin));
        number(root, "water_volume_l", assessment.waterVolumeM3() * LITRES_PER_M3);
        number(root, "turnover_pumps_per_h", assessment.turnover().pumpsPerHour());
        number(root, "turnover_return_per_h", assessment.turnover().returnPerHour());
        assessment.leavings().ifPresent(leavings -> LitterJson.leavings(root.putObject("detritus"), leavings));
        confidence(root.putObject("confidence"), assessment.confidence());
        quality(root.putObject("run"), result.quality());
        grid(root.putObject("grid"), result.grid());
        provenance(root.putObject("provenance"), result.provenance());
        try {
            return MAPPER.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }

    private static void coral(ObjectNode node, CoralReading reading) {
        node.put("name", reading.coral().name());
        node.put("group", CoralNeeds.nameOf(reading.coral().group()));
        node.put("verdict", word(reading.verdict()));
        number(node, "mean_speed_cm_per_s", reading.reading().meanMPerS() * CM_PER_M);
        number(node, "rms_speed_cm_per_s", reading.reading().rmsMPerS() * CM_PER_M);
        number(node, "percentile_95_speed_cm_per_s", reading.reading().p95MPerS() * CM_PER_M);
        number(node, "standard_error_cm_per_s", reading.reading().standardErrorMPerS() * CM_PER_M);
        number(node, "margin_95_cm_per_s", reading.reading().marginMPerS() * CM_PER_M);
        number(node, "grid_doubt_cm_per_s", reading.doubt().gridMPerS().orElse(Double.NaN) * CM_PER_M);
        number(node, "pump_doubt_cm_per_s", reading.doubt().pumpMPerS() * CM_PER_M);
        number(node, "range_95_from_cm_per_s", reading.interval().lowMPerS() * CM_PER_M);
        number(node, "range_95_to_cm_per_s", reading.interval().highMPerS() * CM_PER_M);
        number(node, "wanted_from_cm_per_s", reading.range().lowMPerS() * CM_PER_M);
        number(node, "wanted_to_cm_per_s", reading.range().highMPerS() * CM_PER_M);
        node.put("wanted_source", reading.range().source());
        node.put("sentence", reading.sentence());
        LitterJson.clearances(node.putArray("cleared_of"), reading.clearances());
    }

    private static void stillWater(ObjectNode node, StillWater still) {
        number(node, "mean_limit_cm_per_s", StillWater.MEAN_LIMIT_M_PER_S * CM_PER_M);
        number(node, "gust_limit_cm_per_s", StillWater.GUST_LIMIT_M_PER_S * CM_PER_M);
        number(node, "volume_l", still.volumeM3() * LITRES_PER_M3);
        number(node, "share", still.shareFraction());
        number(node, "expected_l", still.expectedM3() * LITRES_PER_M3);
        number(node, "surely_still_l", still.surelyM3() * LITRES_PER_M3);
        number(node, "possibly_still_l", still.possiblyM3() * LITRES_PER_M3);
        number(node, "scattered_l", still.scatteredM3() * LITRES_PER_M3);
        node.put("scattered_pockets", still.pockets());
        ArrayNode regions = node.putArray("regions");
        still.regions().forEach(region -> region(regions.addObject(), region));
    }

    private static void region(ObjectNode node, StillRegion region) {
        node.put("place", region.place());
        number(node, "volume_l", region.volumeM3() * LITRES_PER_M3);
        number(node, "share", region.shareFraction());
        number(node, "mean_speed_cm_per_s", region.meanMPerS() * CM_PER_M);
        point(node.putArray("centre_cm"), region.centreM());
        point(node.putArray("low_corner_cm"), region.bounds().low());
        point(node.putArray("high_corner_cm"), region.bounds().high());
    }

    private static void sandBed(ObjectNode node, SandBed sand) {
        node.put("sentence", sand.sentence());
        node.put("place", sand.place());
        node.put("warning", sand.isWarning());
        number(node, "height_above_sand_cm", sand.heightM() * CM_PER_M);
        number(node, "mean_speed_cm_per_s", sand.meanMPerS() * CM_PER_M);
        number(node, "gust_speed_cm_per_s", sand.gustMPerS() * CM_PER_M);
        number(node, "threshold_speed_cm_per_s", sand.thresholdMPerS() * CM_PER_M);
        number(node, "warned_share", sand.warnedShareFraction());
        number(node, "gust_shear_pa", sand.shear().gustPa());
        number(node, "threshold_shear_pa", sand.shear().thresholdPa());
        number(node, "blown_share", sand.shear().blownShareFraction());
    }

    private static void bin(ObjectNode node, SpeedHistogram.Bin bin) {
        number(node, "from_cm_per_s", bin.fromMPerS() * CM_PER_M);
        number(node, "to_cm_per_s", bin.toMPerS() * CM_PER_M);
        number(node, "share", bin.shareFraction());
    }

    private static void confidence(ObjectNode node, Confidence confidence) {
        number(node, "companion_cell_size_cm", confidence.companionCellM().orElse(Double.NaN) * CM_PER_M);
        number(node, "typical_grid_doubt_share", confidence.typicalFraction().orElse(Double.NaN));
        number(node, "companion_bias_share", confidence.companionBiasFraction().orElse(Double.NaN));
        number(node, "pump_uncertainty_share", confidence.pumpFraction());
        ArrayNode sentences = node.putArray("sentences");
        confidence.grid().forEach(sentences::add);
        confidence.pumps().forEach(sentences::add);
    }

    private static void quality(ObjectNode node, RunQuality quality) {
        node.put("settled", quality.settled());
        node.put("remark", quality.remark());
        number(node, "spin_up_s", quality.spinUpS());
        number(node, "averaged_s", quality.averagedS());
        number(node, "time_step_s", quality.timeStepS());
        node.put("steps", quality.steps());
        number(node, "greatest_mach", quality.greatestMach());
        number(node, "mass_drift_per_min", quality.massDriftPerMinute());
        number(node, "cell_updates_per_s", quality.cellUpdatesPerS());
        number(node, "wall_time_s", quality.wallTimeS());
    }

    private static void grid(ObjectNode node, Grid grid) {
        node.put("nx", grid.nx());
        node.put("ny", grid.ny());
        node.put("nz", grid.nz());
        number(node, "cell_size_cm", grid.cellSizeM() * CM_PER_M);
    }

    private static void provenance(ObjectNode node, Provenance provenance) {
        node.put("version", provenance.version());
        node.put("scenario_file", provenance.scenarioFile());
        node.put("scenario_text", provenance.scenarioText());
        node.put("scenario_sha256", provenance.scenarioSha256());
        number(node, "cell_size_cm", provenance.cellSizeM() * CM_PER_M);
        node.put("seed", provenance.seed());
        node.put("operator", provenance.operator());
        node.put("backend", provenance.backend());
        node.put("threads", provenance.threads());
        node.put("java_version", provenance.javaVersion());
        node.put("date", provenance.date().toString());
    }

    private static void point(ArrayNode node, Vec3 point) {
        node.add(rounded(point.x() * CM_PER_M)).add(rounded(point.y() * CM_PER_M)).add(rounded(point.z() * CM_PER_M));
    }

    static void number(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, rounded(value));
        } else {
            node.putNull(key);
        }
    }

    /** Eight significant digits: one more than single precision has, so that what rounds it again rounds alike. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(8)).doubleValue();
    }

    private static String word(Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT);
    }
}
