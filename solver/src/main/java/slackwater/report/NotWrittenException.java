package slackwater.report;

import java.nio.file.Path;

/** The report could not be written; the message says where, why and what to do. */
public final class NotWrittenException extends RuntimeException {
    NotWrittenException(Path directory, Exception cause) {
        super("cannot write the report to " + directory + " (" + reason(cause)
                + "): choose a folder that can be written with --out, or make room", cause);
    }

    private static String reason(Exception cause) {
        String kind = switch (cause.getClass().getSimpleName()) {
            case "AccessDeniedException" -> "no permission";
            case "FileAlreadyExistsException" -> "a file stands where the folder should be";
            case "ReadOnlyFileSystemException" -> "it is read-only";
            default -> cause.getClass().getSimpleName();
        };
        return cause.getMessage() == null ? kind : kind + ": " + cause.getMessage();
    }
}
