package slackwater.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Figures;
import slackwater.detritus.Clearance;
import slackwater.result.FlowResult;

/** One line a coral as comma-separated values (RFC 4180), units in the header. */
public final class CoralsCsv {
    private static final String HEADER = "name,group,verdict,mean_speed_cm_per_s,range_95_from_cm_per_s,"
            + "range_95_to_cm_per_s,margin_95_cm_per_s,grid_doubt_cm_per_s,pump_doubt_cm_per_s,"
            + "standard_error_cm_per_s,rms_speed_cm_per_s,percentile_95_speed_cm_per_s,wanted_from_cm_per_s,"
            + "wanted_to_cm_per_s,wanted_source,sentence,x_cm,y_cm,z_cm,"
            + "food_half_gone_s,food_gone_s,food_left_share,food_outcome,sand_half_gone_s,sand_gone_s,sand_left_share,"
            + "sand_outcome";
    private static final String LINE_END = "\r\n";

    private CoralsCsv() {
    }

    /** The whole file. A number that is not known is left empty. */
    public static String write(FlowResult result) {
        return HEADER + LINE_END + result.assessment().corals().stream()
                .map(reading -> line(reading) + LINE_END)
                .collect(Collectors.joining());
    }

    private static String line(CoralReading reading) {
        List<String> cells = new ArrayList<>(reading(reading));
        for (int n = 0; n < 2; n++) {
            cells.addAll(n < reading.clearances().size() ? clearance(reading.clearances().get(n))
                    : List.of("", "", "", ""));
        }
        return String.join(",", cells);
    }

    private static List<String> clearance(Clearance clearance) {
        Clearance.Course likely = clearance.likely();
        return List.of(seconds(likely.halfS()), seconds(likely.clearS()), Figures.decimal(likely.leftFraction(), 3),
                CsvText.quoted(clearance.outcome().name().toLowerCase(Locale.ROOT)));
    }

    private static String seconds(OptionalDouble timeS) {
        return timeS.isPresent() ? Figures.decimal(timeS.getAsDouble(), 0) : "";
    }

    private static List<String> reading(CoralReading reading) {
        return List.of(
            CsvText.quoted(reading.coral().name()),
            CsvText.quoted(CoralNeeds.nameOf(reading.coral().group())),
            CsvText.quoted(reading.verdict().word().toLowerCase(Locale.ROOT)),
            centi(reading.reading().meanMPerS()),
            centi(reading.interval().lowMPerS()),
            centi(reading.interval().highMPerS()),
            centi(reading.reading().marginMPerS()),
            centi(reading.doubt().gridMPerS().orElse(Double.NaN)),
            centi(reading.doubt().pumpMPerS()),
            centi(reading.reading().standardErrorMPerS()),
            centi(reading.reading().rmsMPerS()),
            centi(reading.reading().p95MPerS()),
            centi(reading.range().lowMPerS()),
            centi(reading.range().highMPerS()),
            CsvText.quoted(reading.range().source()),
            CsvText.quoted(reading.sentence()),
            centi(reading.coral().atM().x()),
            centi(reading.coral().atM().y()),
            centi(reading.coral().atM().z()));
    }

    /** A number of SI units in hundredths: cm or cm/s. */
    private static String centi(double value) {
        return Double.isFinite(value) ? Figures.decimal(value * 100, 3) : "";
    }
}
