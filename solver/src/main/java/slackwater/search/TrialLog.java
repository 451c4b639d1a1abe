package slackwater.search;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every trial that was made, one line of JSON each. Lines are only added, and each is on the disk before the next trial
 * begins, so a kill costs the trial that was running. What is written here is never computed again: a search that is
 * started once more walks the same way and reads its first trials from the log. Logs of separate machines are merged by
 * putting one behind the other.
 */
public final class TrialLog implements AutoCloseable {
    private final Map<String, Trial> known = new LinkedHashMap<>();
    private final FileChannel file;

    private TrialLog(FileChannel file) {
        this.file = file;
    }

    /**
     * Opens a log to go on with, or begins one.
     *
     * @throws IOException if it cannot be read or written, or another search is writing to it
     */
    public static TrialLog open(Path path) throws IOException {
        FileChannel file = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ,
                StandardOpenOption.WRITE);
        TrialLog log = new TrialLog(file);
        try {
            requireAlone(file);
            byte[] bytes = all(file);
            int whole = bytes.length;
            while (whole > 0 && bytes[whole - 1] != '\n') {
                whole--;
            }
            // A torn last line is cut off, so that the next one does not grow onto it.
            file.truncate(whole);
            file.position(whole);
            lines(new String(bytes, 0, whole, StandardCharsets.UTF_8)).forEach(log::keep);
            return log;
        } catch (IOException | RuntimeException unreadable) {
            file.close();
            throw unreadable;
        }
    }

    /** Read through the channel that holds the lock: on some systems nobody else may. */
    private static byte[] all(FileChannel file) throws IOException {
        file.position(0);
        return Channels.newInputStream(file).readAllBytes();
    }

    private static void requireAlone(FileChannel file) throws IOException {
        Optional<FileLock> lock;
        try {
            lock = Optional.ofNullable(file.tryLock());
        } catch (OverlappingFileLockException taken) {
            lock = Optional.empty();
        }
        if (lock.isEmpty()) {
            throw new IOException("another search is writing to it");
        }
    }

    /**
     * Reads another machine's log into this one.
     *
     * @return the trials that were new
     * @throws IOException if it cannot be read or is none, or this one cannot be written
     */
    public List<Trial> merge(Path other) throws IOException {
        List<Trial> added = new ArrayList<>();
        for (Trial trial : read(other)) {
            if (!known.containsKey(trial.key())) {
                add(trial);
                added.add(trial);
            }
        }
        return List.copyOf(added);
    }

    private static List<Trial> read(Path other) throws IOException {
        String text;
        try {
            text = Files.readString(other);
        } catch (CharacterCodingException binary) {
            throw new IOException("it is no text; must be a log of trials, such as trials.jsonl", binary);
        }
        List<Trial> trials = lines(text);
        if (trials.isEmpty() && !text.isBlank()) {
            throw new IOException("there is no trial in it; must be a log of trials, such as trials.jsonl");
        }
        return trials;
    }

    /** What is known of a trial. */
    public Optional<Trial> find(String key) {
        return Optional.ofNullable(known.get(key));
    }

    /** Every trial, in the order in which they were made. */
    public List<Trial> trials() {
        return List.copyOf(known.values());
    }

    /**
     * Adds a trial and waits until it is on the disk.
     *
     * @throws LogNotWritten if the disk does not take it
     */
    public void add(Trial trial) {
        ByteBuffer line = ByteBuffer.wrap((TrialJson.line(trial) + "\n").getBytes(StandardCharsets.UTF_8));
        try {
            while (line.hasRemaining()) {
                file.write(line);
            }
            file.force(false);
        } catch (IOException full) {
            throw new LogNotWritten(full);
        }
        keep(trial);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    private void keep(Trial trial) {
        known.put(trial.key(), trial);
    }

    private static List<Trial> lines(String text) {
        List<Trial> trials = new ArrayList<>();
        text.lines().map(TrialJson::trial).forEach(trial -> trial.ifPresent(trials::add));
        return trials;
    }
}
