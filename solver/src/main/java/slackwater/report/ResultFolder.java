package slackwater.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slackwater.detritus.Scene;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.result.KeptResult;
import slackwater.result.ResultReader;
import slackwater.result.UnreadableResult;

/**
 * What a run left behind, read back.
 *
 * @param kept readings, verdicts, the scenario
 * @param flow the water, as it was written: bit for bit
 * @param stillProbability that each cell's water stands still, 0..1
 * @param deposits by the name of what was let go in the tank, where it came to lie: share of it a square metre, one
 *     value a cell; empty where the run followed nothing
 * @param grains where every grain was at the end; empty where there is no such file
 */
public record ResultFolder(KeptResult kept, FlowStatistics flow, float[] stillProbability,
                           Map<String, float[]> deposits, Optional<Scene> grains) {
    private static final long MOST_JSON_BYTES = 64L << 20;
    private static final Pattern DEPOSIT = Pattern.compile("deposit_(.+)_per_m2");
    private static final String JSON = "result.json";
    private static final String FIELD = "flow.vti";
    private static final String GRAINS = "grains.vtp";

    /**
     * Reads a folder that {@link Report#write} made.
     *
     * @throws UnreadableResult where a file is missing or broken, or the two belong to different runs
     */
    public static ResultFolder read(Path folder) throws UnreadableResult {
        Path json = folder.resolve(JSON);
        for (Path file : new Path[] {json, folder.resolve(FIELD)}) {
            if (!Files.isRegularFile(file)) {
                throw new UnreadableResult(folder + ": has no " + file.getFileName()
                        + ", must be the folder of a finished run; 'slackwater run' makes one");
            }
        }
        try {
            if (Files.size(json) > MOST_JSON_BYTES) {
                throw new UnreadableResult(json + ": has more than 64 MB, is none of ours");
            }
            KeptResult kept = ResultReader.read(new String(Files.readAllBytes(json), StandardCharsets.UTF_8), json);
            VtkField field = VtkField.read(folder.resolve(FIELD));
            if (!fits(kept.grid(), field.grid())) {
                throw new UnreadableResult(folder + ": " + JSON + " and " + FIELD
                        + " belong to different runs; run the scenario again");
            }
            return new ResultFolder(kept, field.flow(), field.array("still_probability"), deposits(field),
                    GrainsFile.read(folder.resolve(GRAINS)));
        } catch (IOException unread) {
            throw new UnreadableResult(folder + ": cannot be read (" + unread.getMessage() + ")");
        }
    }

    private static Map<String, float[]> deposits(VtkField field) throws UnreadableResult {
        Map<String, float[]> deposits = new LinkedHashMap<>();
        for (String name : field.names()) {
            Matcher deposit = DEPOSIT.matcher(name);
            if (deposit.matches()) {
                deposits.put(deposit.group(1), field.array(name));
            }
        }
        return deposits;
    }

    private static boolean fits(Grid written, Grid found) {
        return written.nx() == found.nx() && written.ny() == found.ny() && written.nz() == found.nz()
                && Math.abs(written.cellSizeM() - found.cellSizeM()) < 1e-5 * found.cellSizeM();
    }
}
