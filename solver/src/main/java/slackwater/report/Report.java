package slackwater.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slackwater.detritus.Drift;
import slackwater.field.FlowStatistics;
import slackwater.result.FlowResult;
import slackwater.result.ResultJson;

/** Everything that a run leaves behind. */
public final class Report {
    /** Names of the files, in the order in which a reader wants them. */
    public static final List<String> FILES = List.of("report.html", "corals.csv", "result.json", "flow.vti",
            "grains.vtp");

    private Report() {
    }

    /**
     * Makes the folder and sees that it can be written, so that a run does not compute for nothing.
     *
     * @throws NotWrittenException if it cannot
     */
    public static void requireWritable(Path directory) {
        try {
            Files.createDirectories(directory);
            try (PendingFiles trial = new PendingFiles(directory)) {
                trial.add("trial", out -> { });
            }
        } catch (IOException e) {
            throw new NotWrittenException(directory, e);
        }
    }

    /**
     * Writes all files of {@link #FILES} into a folder, which is made if need be. None takes its place before all are
     * complete; older ones of the same name are replaced.
     *
     * @throws NotWrittenException if the folder cannot be made or written
     */
    public static void write(FlowResult result, FlowStatistics flow, Path directory) {
        write(result, flow, Artist.NONE.draw(result, flow), directory);
    }

    /** The same with views of the tank in space on the page. */
    public static void write(FlowResult result, FlowStatistics flow, Artwork artwork, Path directory) {
        try {
            Files.createDirectories(directory);
            try (PendingFiles files = new PendingFiles(directory)) {
                files.add(FILES.get(0), out -> text(out, ReportHtml.write(result, flow, artwork)));
                files.add(FILES.get(1), out -> text(out, CoralsCsv.write(result)));
                files.add(FILES.get(2), out -> text(out, ResultJson.write(result)));
                files.add(FILES.get(3), out ->
                        VtkImageData.write(flow, result.assessment().stillWater().probability(), more(result, flow),
                                out));
                files.add(FILES.get(4), out -> grains(result, out));
                files.commit();
            }
        } catch (IOException e) {
            throw new NotWrittenException(directory, e);
        }
    }

    private static Map<String, float[]> more(FlowResult result, FlowStatistics flow) {
        Map<String, float[]> deposits = new LinkedHashMap<>();
        deposits.put("wall_shear_gust_Pa", flow.gustWallShear());
        result.assessment().leavings().ifPresent(leavings -> leavings.litter().fates().forEach(fate ->
                deposits.put("deposit_" + fate.grain().name() + "_per_m2", fate.depositPerM2())));
        return deposits;
    }

    private static void grains(FlowResult result, OutputStream out) throws IOException {
        Drift drift = result.assessment().leavings().map(leavings -> leavings.litter().drift()).orElse(Drift.NONE);
        VtkGrains.write(drift.scenes().get(drift.scenes().size() - 1), drift, out);
    }

    private static void text(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }
}
