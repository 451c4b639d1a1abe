package slackwater.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Files written beside their places under other names and moved there together at the end; whatever was not moved is
 * deleted, also when the program is stopped.
 */
final class PendingFiles implements AutoCloseable {
    private final Path directory;
    private final Map<Path, Path> targets = new LinkedHashMap<>();

    /** What writes a file's content. */
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    PendingFiles(Path directory) {
        this.directory = directory;
    }

    void add(String name, Content content) throws IOException {
        Path pending = directory.resolve("." + name + "." + ProcessHandle.current().pid() + ".part");
        pending.toFile().deleteOnExit();
        targets.put(pending, directory.resolve(name));
        try (OutputStream out = Files.newOutputStream(pending)) {
            content.to(out);
        }
    }

    void commit() throws IOException {
        for (Map.Entry<Path, Path> entry : targets.entrySet()) {
            try {
                Files.move(entry.getKey(), entry.getValue(), StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(entry.getKey(), entry.getValue(), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    @Override
    public void close() throws IOException {
        for (Path pending : targets.keySet()) {
            Files.deleteIfExists(pending);
        }
    }
}
