package slackwater.viewer.scene;

/** Knows how wide letters are. */
public interface Type {
    /** Width of a line of text, units of type. */
    double width(String text, double size);
}
