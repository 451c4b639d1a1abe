package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.MadeUpTank;
import slackwater.field.FlowStatistics;
import slackwater.result.FlowResult;
import slackwater.scenario.Scenario;

class ReportTest {
    private final Scenario scenario = MadeUpTank.scenario();
    private final FlowStatistics flow = MadeUpTank.flow(scenario, 0.02);
    private final FlowResult result = MadeUpTank.result(scenario, flow);

    @TempDir
    private Path folder;

    @Test
    void writesItsFilesAndNothingElse() throws IOException {
        Path target = folder.resolve("new").resolve("deeper");
        Report.write(result, flow, target);
        Report.write(result, flow, target);
        try (Stream<Path> files = Files.list(target)) {
            assertEquals(Set.copyOf(Report.FILES),
                    files.map(file -> file.getFileName().toString()).collect(Collectors.toSet()));
        }
    }

    @Test
    void tryingAFolderLeavesItEmpty() throws IOException {
        Report.requireWritable(folder.resolve("new"));
        try (Stream<Path> files = Files.list(folder.resolve("new"))) {
            assertEquals(0, files.count());
        }
    }

    @Test
    void saysWhichFolderCannotBeWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "a file");
        Path below = file.resolve("report");
        for (Path wrong : new Path[] {file, below}) {
            String message = assertThrows(NotWrittenException.class, () -> Report.requireWritable(wrong)).getMessage();
            assertTrue(message.startsWith("cannot write the report to " + wrong), message);
            assertEquals(message, assertThrows(NotWrittenException.class, () -> Report.write(result, flow, wrong))
                    .getMessage());
        }
    }

    @Test
    void leavesNoHalfWrittenFiles() throws IOException {
        try (PendingFiles files = new PendingFiles(folder)) {
            files.add("whole", out -> out.write(1));
            assertThrows(IOException.class, () -> files.add("broken", out -> {
                out.write(2);
                throw new IOException("the disc is full");
            }));
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(0, files.count());
        }
    }
}
