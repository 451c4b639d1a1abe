package slackwater.validation;

/** How well a published value is known to us, in the words of docs/references.md. */
enum Known {
    EXACT("exact"),
    READ("read"),
    SECOND_HAND("read second-hand"),
    FROM_MEMORY("from memory");

    final String words;

    Known(String words) {
        this.words = words;
    }
}
