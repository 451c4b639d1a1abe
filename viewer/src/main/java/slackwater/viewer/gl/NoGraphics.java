package slackwater.viewer.gl;

/** There is nothing to draw with; the message is one sentence that says what to install. */
public final class NoGraphics extends Exception {
    private static final long serialVersionUID = 1;

    public NoGraphics(String message) {
        super(message);
    }
}
