package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.search.Stage;
import slackwater.search.Trial;
import slackwater.search.TrialLog;

/** A search in a process of its own that is killed outright, twice, and started again: law, one uninterrupted run. */
class KillTest {
    private static final long LONGEST_S = 600;
    /** Trials on disk at which it is killed: amid the search on large cells, and when that is over. */
    private static final int[] KILLED_AT = {6, 14};

    @TempDir
    private Path folder;

    @Test
    void aSearchThatIsKilledGoesOnAsIfNothingHadBeen() throws Exception {
        Path whole = folder.resolve("whole");
        int code = finished(start(whole));
        assertTrue(code == ExitCode.DONE || code == ExitCode.VERDICT_FAIL, "code " + code);
        Path again = folder.resolve("again");
        for (int trials : KILLED_AT) {
            kill(again, trials);
        }
        assertEquals(code, finished(start(again)));
        assertEquals(untimed(whole), untimed(again), "the same trials, in the same order, none computed twice");
        assertTrue(untimed(whole).stream().anyMatch(trial -> trial.stage() == Stage.HOLD)
                && untimed(whole).size() > KILLED_AT[1] + 2, "there was something left to do");
        for (String file : List.of("placing.txt", "best.toml", "layout.svg")) {
            assertEquals(Files.readString(whole.resolve(file)), Files.readString(again.resolve(file)), file);
        }
    }

    /** Kills it as soon as so many trials are on the disk; what it was just computing is lost. */
    private void kill(Path out, int trials) throws Exception {
        Process search = start(out);
        Path log = out.resolve("trials.jsonl");
        while (search.isAlive() && lines(log) < trials) {
            Thread.sleep(5);
        }
        search.destroyForcibly().waitFor();
        assertNotEquals(ExitCode.DONE, search.exitValue(), "it ended before it could be killed");
        assertTrue(lines(log) >= trials && !Files.exists(out.resolve("placing.txt")));
    }

    private static long lines(Path log) throws IOException {
        return Files.exists(log) ? Files.readString(log).lines().count() : 0;
    }

    private Process start(Path out) throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        return new ProcessBuilder(java.toString(), "-Xmx1g", "--add-modules", "jdk.incubator.vector", "-cp",
                System.getProperty("java.class.path"), Main.class.getName(), "place", "../scenarios/nano-30.toml",
                "--screen-cell-cm", "4", "--cell-cm", "3", "--max-turns", "3", "--threads", "1", "--budget", "8",
                "--confirm", "1", "--out", out.toString())
                .redirectErrorStream(true).redirectOutput(folder.resolve("said.txt").toFile()).start();
    }

    private int finished(Process search) throws Exception {
        assertTrue(search.waitFor(LONGEST_S, TimeUnit.SECONDS), "it has not ended");
        String said = Files.readString(folder.resolve("said.txt"));
        assertFalse(said.contains("\tat "), said);
        return search.exitValue();
    }

    private static List<Trial> untimed(Path out) throws IOException {
        try (TrialLog log = TrialLog.open(out.resolve("trials.jsonl"))) {
            return log.trials().stream().map(trial -> new Trial(trial.key(), trial.stage(), trial.way(), trial.pumps(),
                    trial.outcome(), 0)).toList();
        }
    }
}
