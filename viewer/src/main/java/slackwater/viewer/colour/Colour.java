package slackwater.viewer.colour;

/** A colour in sRGB; each part 0..1, opacity too. */
public record Colour(float red, float green, float blue, float opacity) {
    /** An opaque colour from 0xRRGGBB. */
    public static Colour of(int rgb) {
        return new Colour((rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f, 1);
    }

    /** The same colour, more or less see-through. */
    public Colour withOpacity(double share) {
        return new Colour(red, green, blue, (float) share);
    }

    public boolean isOpaque() {
        return opacity >= 1;
    }

    /** Four bytes, red lowest, as graphics memory has them on a little-endian machine. */
    public int packed() {
        return Math.round(red * 255) | Math.round(green * 255) << 8 | Math.round(blue * 255) << 16
                | Math.round(opacity * 255) << 24;
    }
}
