package slackwater.viewer.gl;

/**
 * Where a picture goes.
 *
 * @param framebuffer OpenGL's number of a framebuffer; 0 for a window
 * @param leftPx where the picture's lower left corner goes, pixels from the left
 * @param bottomPx the same, from the bottom
 */
public record Target(int framebuffer, int leftPx, int bottomPx) {
    public static final Target WINDOW = new Target(0, 0, 0);
}
