package slackwater.viewer.camera;

/** Room kept free about what is looked at, in units of type. */
public record Margins(double left, double right, double top, double bottom) {
    public static final Margins NONE = new Margins(0, 0, 0, 0);

    /** Room enough for both. */
    public Margins with(Margins other) {
        return new Margins(Math.max(left, other.left), Math.max(right, other.right), Math.max(top, other.top),
                Math.max(bottom, other.bottom));
    }
}
