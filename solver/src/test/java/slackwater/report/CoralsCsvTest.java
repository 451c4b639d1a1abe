package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.analysis.CoralReading;
import slackwater.geometry.Vec3;
import slackwater.result.FlowResult;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Scenario;

class CoralsCsvTest {
    private static final Vec3 AT = new Vec3(0.6, 0.25, 0.25);
    private final Scenario scenario = MadeUpTank.with(MadeUpTank.scenario(), List.of(
            coral("plain"), coral("with \"quotes\", commas\nand a new line"), coral("=1+1"), coral("@sum"),
            coral("-x"), coral("plate \u00e9\u4e2d"), coral("+1+1"), coral("\t=1"), coral("\r=1")));
    private final FlowResult result = MadeUpTank.result(scenario, MadeUpTank.flow(scenario, 0.02));

    @Test
    void anIndependentReaderReadsItBack() throws IOException {
        List<CSVRecord> records = read();
        assertEquals(scenario.corals().size(), records.size());
        for (int n = 0; n < records.size(); n++) {
            CSVRecord record = records.get(n);
            CoralReading reading = result.assessment().corals().get(n);
            assertEquals(27, record.size());
            assertEquals(reading.reading().meanMPerS() * 100, number(record, "mean_speed_cm_per_s"), 5.1e-4);
            assertEquals(reading.reading().p95MPerS() * 100, number(record, "percentile_95_speed_cm_per_s"), 5.1e-4);
            assertEquals(reading.interval().lowMPerS() * 100, number(record, "range_95_from_cm_per_s"), 5.1e-4);
            assertEquals(reading.interval().highMPerS() * 100, number(record, "range_95_to_cm_per_s"), 5.1e-4);
            assertEquals("", record.get("grid_doubt_cm_per_s"), "one grid knows nothing of the cells");
            assertEquals(4, number(record, "wanted_from_cm_per_s"));
            assertEquals(25, number(record, "y_cm"));
            assertEquals(reading.verdict().name(), record.get("verdict").toUpperCase(Locale.ROOT));
            assertEquals(reading.sentence(), record.get("sentence"));
        }
        assertEquals("with \"quotes\", commas\nand a new line", records.get(1).get("name"));
        assertEquals("plate \u00e9\u4e2d", records.get(5).get("name"));
    }

    @Test
    void noCellStartsAFormula() throws IOException {
        assertEquals(List.of("'=1+1", "'@sum", "'-x"), read().subList(2, 5).stream().map(one -> one.get("name"))
                .toList());
        assertEquals(List.of("'+1+1", "'\t=1", "'\r=1"), read().subList(6, 9).stream().map(one -> one.get("name"))
                .toList());
        for (CSVRecord record : read()) {
            for (String name : List.of("name", "group", "sentence", "wanted_source")) {
                assertTrue("=+-@\t\r".indexOf(record.get(name).charAt(0)) < 0, record.get(name));
            }
        }
    }

    private List<CSVRecord> read() throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(CoralsCsv.write(result), format)) {
            return parser.getRecords();
        }
    }

    private static double number(CSVRecord record, String name) {
        return Double.parseDouble(record.get(name));
    }

    private static Coral coral(String name) {
        return MadeUpTank.coral(name, CoralGroup.PLATING, AT, 0.1);
    }
}
