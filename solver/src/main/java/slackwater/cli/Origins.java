package slackwater.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import slackwater.discretisation.Discretisation;
import slackwater.result.Provenance;

/** Where a result comes from. */
final class Origins {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private Origins() {
    }

    static Provenance of(Path file, Discretisation discretisation, GridOptions options) {
        byte[] bytes = bytes(file);
        String text = new String(bytes, StandardCharsets.UTF_8);
        return new Provenance(Version.number(), String.valueOf(file.getFileName()),
                text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text, sha256(bytes), options.cellSizeM(),
                options.seed(), discretisation.problem().operator().toString(), "cpu", options.threads(),
                Runtime.version().toString(), Instant.now());
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException gone) {
            throw new BadInput(file + ": could be read at the start of the run and cannot any more: "
                    + gone.getMessage());
        }
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
