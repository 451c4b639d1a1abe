package slackwater.validation;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A published table, from a file among the test resources; its first lines say where it comes from. */
record Published(List<CSVRecord> rows) {
    static Published read(String file) {
        CSVFormat format = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true)
                .get();
        try (Reader in = new InputStreamReader(Published.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            return new Published(format.parse(in).getRecords());
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    Published where(Predicate<CSVRecord> wanted) {
        return new Published(rows.stream().filter(wanted).toList());
    }

    double[] column(String name) {
        return rows.stream().mapToDouble(row -> Double.parseDouble(row.get(name))).toArray();
    }
}
