package slackwater.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import slackwater.search.TrialLog;

/** Opens logs of trials, and says what is wrong where one cannot be. */
final class LogFile {
    private LogFile() {
    }

    /** @throws BadInput if the folder or the file cannot be written */
    static TrialLog open(Path path) {
        try {
            Files.createDirectories(path.toAbsolutePath().getParent());
            return TrialLog.open(path);
        } catch (IOException unwritable) {
            throw new BadInput("--out: " + path + " cannot be written (" + unwritable.getMessage()
                    + "); choose another folder");
        }
    }

    /** @throws BadInput if the other log cannot be read */
    static int merge(TrialLog log, Path other) {
        try {
            return log.merge(other);
        } catch (IOException unreadable) {
            throw new BadInput("--merge: " + other + " cannot be read (" + unreadable.getMessage() + ")");
        }
    }
}
