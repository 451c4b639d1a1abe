package slackwater.search;

import java.util.Locale;

/** What a trial was run for. */
public enum Stage {
    /** A quick look on large cells. */
    SCREEN,
    /** A second look at the best of them, on smaller cells. */
    SIFT,
    /** The run on fine cells on which a layout is judged. */
    CONFIRM,
    /** One of the runs that see whether a confirmed layout holds when something is a little off. */
    HOLD;

    /** As the log has it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Stage meant(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
