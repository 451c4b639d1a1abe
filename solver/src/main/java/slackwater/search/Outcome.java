package slackwater.search;

/** How a trial ended. */
public sealed interface Outcome {
    /** With readings. */
    record Read(Finding finding) implements Outcome {
    }

    /**
     * Without.
     *
     * @param why in a sentence
     */
    record Failed(String why) implements Outcome {
    }
}
