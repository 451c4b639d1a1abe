package slackwater.result;

/** The folder of a run that cannot be read back; the message says where, what was found and what to do. */
public final class UnreadableResult extends Exception {
    private static final long serialVersionUID = 1;

    public UnreadableResult(String message) {
        super(message);
    }
}
