package slackwater.cli;

import java.nio.file.Path;

/** Names made from file names. */
final class Names {
    private Names() {
    }

    /** The file's name without folder and ending. */
    static String of(Path file) {
        Path name = file.getFileName();
        String text = name == null ? "scenario" : name.toString();
        int dot = text.lastIndexOf('.');
        return dot > 0 ? text.substring(0, dot) : text;
    }
}
