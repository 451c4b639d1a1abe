package slackwater.cli;

/** What the launcher knows about where the program's words go. */
final class Terminal {
    private Terminal() {
    }

    /** Whether a person watches: the launcher says so, since Java cannot tell for one stream alone. */
    static boolean present() {
        return Boolean.getBoolean("slackwater.terminal");
    }
}
