package slackwater.cli;

import java.io.IOException;
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
    private Origins() {
    }

    static Provenance of(Path file, Discretisation discretisation, GridOptions options) {
        return new Provenance(Version.number(), String.valueOf(file.getFileName()), sha256(file),
                options.cellSizeM(), options.seed(), discretisation.problem().operator().toString(), "cpu",
                options.threads(), Runtime.version().toString(), Instant.now());
    }

    private static String sha256(Path file) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (IOException gone) {
            throw new BadInput(file + ": could be read at the start of the run and cannot any more: "
                    + gone.getMessage());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
