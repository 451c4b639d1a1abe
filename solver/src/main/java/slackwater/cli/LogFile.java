package slackwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import slackwater.search.Trial;
import slackwater.search.TrialLog;

/** An open log of trials; as long as it is open, a stop says that nothing is lost. */
final class LogFile implements AutoCloseable {
    private final TrialLog log;
    private final Thread farewell;

    private LogFile(TrialLog log, PrintWriter out) {
        this.log = log;
        this.farewell = new Thread(() -> out.println("\nStopped. The same command goes on from here."));
        Runtime.getRuntime().addShutdownHook(farewell);
    }

    /** @throws BadInput if the folder or the file cannot be written */
    static LogFile open(Path path, PrintWriter out) {
        try {
            Files.createDirectories(path.toAbsolutePath().getParent());
            return new LogFile(TrialLog.open(path), out);
        } catch (IOException unwritable) {
            throw new BadInput("--out: " + path + " cannot be written (" + unwritable.getMessage()
                    + "); choose another folder");
        }
    }

    TrialLog log() {
        return log;
    }

    /**
     * Reads another machine's log into this one.
     *
     * @return the trials that were new
     * @throws BadInput if the other log cannot be read
     */
    List<Trial> merge(Path other) {
        try {
            return log.merge(other);
        } catch (IOException unreadable) {
            throw new BadInput("--merge: " + other + " cannot be read (" + unreadable.getMessage() + ")");
        }
    }

    @Override
    public void close() throws IOException {
        Runtime.getRuntime().removeShutdownHook(farewell);
        log.close();
    }
}
