package slackwater.viewer.camera;

/**
 * A picture's size.
 *
 * @param widthPx pixels across, above 0
 * @param heightPx pixels down, above 0
 * @param scale pixels to a unit of type and line width: 1, or more on fine screens
 */
public record Frame(int widthPx, int heightPx, double scale) {
    public Frame {
        if (widthPx < 1 || heightPx < 1 || !(scale > 0)) {
            throw new IllegalArgumentException("a picture must have pixels: " + widthPx + " x " + heightPx + ", "
                    + scale);
        }
    }

    public double aspect() {
        return (double) widthPx / heightPx;
    }

    /** Width in units of type. */
    public double widthUnits() {
        return widthPx / scale;
    }

    /** Height in units of type. */
    public double heightUnits() {
        return heightPx / scale;
    }
}
