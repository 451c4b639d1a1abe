package slackwater.viewer.gl;

/**
 * A picture.
 *
 * @param rgb three bytes a pixel, rows from the top
 */
public record Image(int widthPx, int heightPx, byte[] rgb) {
    public Image {
        if (rgb.length != 3 * widthPx * heightPx) {
            throw new IllegalArgumentException("a picture must have three bytes a pixel");
        }
    }

    /** The colour of a pixel as 0xRRGGBB. */
    public int at(int xPx, int yPx) {
        int n = 3 * (yPx * widthPx + xPx);
        return (rgb[n] & 255) << 16 | (rgb[n + 1] & 255) << 8 | rgb[n + 2] & 255;
    }
}
