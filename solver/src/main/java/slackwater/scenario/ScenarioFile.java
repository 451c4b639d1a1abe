package slackwater.scenario;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import slackwater.scenario.format.Fault;
import slackwater.scenario.format.Faults;

/**
 * A scenario file that was opened to be changed.
 *
 * @param file where it lies
 * @param text what stood in it, without a byte order mark
 * @param marked whether it began with a byte order mark
 * @param scenario what it says
 */
public record ScenarioFile(Path file, String text, boolean marked, Scenario scenario) {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /**
     * Reads a file, once.
     *
     * @throws ScenarioFaults with everything that is wrong with it
     */
    public static ScenarioFile open(Path file) throws ScenarioFaults {
        Faults faults = new Faults(String.valueOf(file.getFileName()));
        String raw = SourceText.marked(file, faults).orElse("");
        if (!faults.isEmpty()) {
            throw new ScenarioFaults(faults.inOrder());
        }
        boolean marked = raw.startsWith(BYTE_ORDER_MARK);
        String text = marked ? raw.substring(1) : raw;
        return new ScenarioFile(file, text, marked, read(text, file));
    }

    /**
     * The file with another layout, not written yet: its rocks, pumps, return and corals are the wanted ones, its name,
     * tank and weir stay. Values that did not change stay as they were typed, with all comments; numbers that no unit
     * holds exactly are rounded by at most 1e-8 in SI units.
     *
     * @throws ScenarioFaults where the result would not be read again as a sound scenario, or not as the wanted one
     */
    public ScenarioFile with(Scenario wanted) throws ScenarioFaults {
        String changed = ScenarioText.changed(text, name(), scenario, wanted);
        Scenario back = ScenarioReader.read(changed, name(), folder(file), wanted);
        if (!ScenarioText.same(back, wanted)) {
            throw refusal("cannot be changed in place without changing more than was meant; save to a new file");
        }
        return new ScenarioFile(file, changed, marked, back);
    }

    /**
     * The layout written out anew for another file of the same folder.
     *
     * @throws ScenarioFaults where it would not be read again
     */
    public ScenarioFile anew(Path other, Scenario wanted) throws ScenarioFaults {
        String written = ScenarioWriter.write(wanted);
        return new ScenarioFile(other, written, false, read(written, other));
    }

    /** True where the file holds other text than this, or none. */
    public boolean changedOnDisk() {
        try {
            return !Files.readString(file).equals(raw());
        } catch (IOException unread) {
            return true;
        }
    }

    /**
     * Writes the text: first to a new file beside it, which then takes its place, so that at no time there is half a
     * file. A link is followed; permissions stay.
     *
     * @throws IOException where the folder or the file cannot be written
     */
    public void write() throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path fresh = Files.createTempFile(target.getParent(), ".", ".toml.part");
        try {
            try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
                ByteBuffer bytes = ByteBuffer.wrap(raw().getBytes(StandardCharsets.UTF_8));
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            keepPermissions(target, fresh);
            replace(fresh, target);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** On file systems that know permissions, the new file gets those of the old one. */
    private static void keepPermissions(Path target, Path fresh) throws IOException {
        if (Files.getFileStore(fresh).supportsFileAttributeView(PosixFileAttributeView.class)) {
            Files.setPosixFilePermissions(fresh, Files.exists(target) ? Files.getPosixFilePermissions(target)
                    : PosixFilePermissions.fromString("rw-r--r--"));
        }
    }

    private static void replace(Path fresh, Path target) throws IOException {
        try {
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException unable) {
            Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private String raw() {
        return marked ? BYTE_ORDER_MARK + text : text;
    }

    private String name() {
        return String.valueOf(file.getFileName());
    }

    private ScenarioFaults refusal(String says) {
        return new ScenarioFaults(List.of(new Fault(name(), 0, "", says)));
    }

    private static Scenario read(String text, Path file) throws ScenarioFaults {
        return ScenarioReader.read(text, String.valueOf(file.getFileName()), folder(file));
    }

    private static Path folder(Path file) {
        return file.toAbsolutePath().normalize().getParent();
    }
}
