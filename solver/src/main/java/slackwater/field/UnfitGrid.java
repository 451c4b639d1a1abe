package slackwater.field;

/** A scenario that cannot be put on cells of this size; the message says what has no room and what to do. */
public final class UnfitGrid extends RuntimeException {
    private static final long serialVersionUID = 1;

    public UnfitGrid(String message) {
        super(message);
    }
}
