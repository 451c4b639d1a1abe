package slackwater.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slackwater.scenario.format.Faults;

/** The text of a file that a user wrote, or what keeps it from being text. */
public final class SourceText {
    private static final int MOST_BYTES = 1 << 20;
    private static final String SCENARIO_HOLDS = "must have at least name, [tank] and one [[pump]]";
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private SourceText() {
    }

    static Optional<String> of(Path file, Faults faults) {
        return of(file, SCENARIO_HOLDS, faults);
    }

    /**
     * The text of a TOML file of at most 1 MB without its byte order mark; empty where a fault was told.
     *
     * @param must what an empty file is told to have
     */
    public static Optional<String> of(Path file, String must, Faults faults) {
        return marked(file, must, faults).map(text -> text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
    }

    /** The text of a scenario as it is, a byte order mark included; empty where a fault was told. */
    static Optional<String> marked(Path file, Faults faults) {
        return marked(file, SCENARIO_HOLDS, faults);
    }

    private static Optional<String> marked(Path file, String must, Faults faults) {
        if (!Files.isRegularFile(file)) {
            return refuse(faults, Files.exists(file) ? "is not a file, must be a .toml file"
                    : "is missing; check its name");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? refuse(faults, "has more than 1 MB, must be a plain scenario file")
                    : decoded(bytes, must, faults);
        } catch (IOException unreadable) {
            return refuse(faults, "cannot be opened (" + unreadable.getMessage() + ")");
        }
    }

    private static Optional<String> decoded(byte[] bytes, String must, Faults faults) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(buffer).toString();
            String bare = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
            return bare.isBlank() ? refuse(faults, "is empty, " + must) : Optional.of(text);
        } catch (CharacterCodingException notText) {
            int line = 1;
            for (int i = 0; i < buffer.position(); i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            faults.add(line, "", "found a byte that is not UTF-8 text; save the file as UTF-8");
            return Optional.empty();
        }
    }

    private static Optional<String> refuse(Faults faults, String says) {
        faults.add(0, "", says);
        return Optional.empty();
    }
}
