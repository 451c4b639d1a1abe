package slackwater.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes small results, and says what is wrong where one cannot be written. */
final class OutFile {
    private OutFile() {
    }

    /** @throws BadInput if the file cannot be written */
    static void write(Path file, List<String> lines) {
        write(file, String.join("\n", lines) + "\n");
    }

    /** @throws BadInput if the file cannot be written */
    static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException unwritable) {
            throw new BadInput("--out: " + file + " cannot be written (" + unwritable.getMessage() + "); the log of"
                    + " trials is safe, so the same command with room to write computes nothing again");
        }
    }
}
