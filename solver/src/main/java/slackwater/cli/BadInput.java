package slackwater.cli;

/** Something asked for that cannot be done; the message says what to do instead. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1;

    public BadInput(String message) {
        super(message);
    }
}
