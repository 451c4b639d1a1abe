package slackwater.cli;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** What the launcher knows about where the program's words go. */
final class Terminal {
    private Terminal() {
    }

    /** The encoding of what is printed: UTF-8, but a Windows console has its own. */
    static Charset charset() {
        boolean windows = System.getProperty("os.name", "").startsWith("Windows");
        return windows && System.console() != null ? System.console().charset() : StandardCharsets.UTF_8;
    }

    /** Whether a person watches: the launcher says so, since Java cannot tell for one stream alone. */
    static boolean present() {
        return Boolean.getBoolean("slackwater.terminal");
    }
}
