package slackwater.search;

import java.io.IOException;

/** The log of trials could not be written; the message says what to do. */
public final class LogNotWritten extends RuntimeException {
    private static final long serialVersionUID = 1;

    LogNotWritten(IOException cause) {
        super("the log of trials cannot be written (" + cause.getMessage() + "); make room and start the same command"
                + " again: it goes on from the last trial that is in the log", cause);
    }
}
