package slackwater.viewer.gl;

/** A picture of this size cannot be had here; the message is one sentence that says so. */
public final class NoCanvas extends IllegalStateException {
    private static final long serialVersionUID = 1;

    NoCanvas(int widthPx, int heightPx) {
        super("No picture of " + widthPx + " x " + heightPx + " pixels can be drawn here: it needs more memory than"
                + " there is; choose a smaller one.");
    }
}
