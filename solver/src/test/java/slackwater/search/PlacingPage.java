package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The parts of docs/placing.md that are made from the code, each between two comments. */
public final class PlacingPage {
    private PlacingPage() {
    }

    /** Compares a part with what it should be, or writes it anew with -Dslackwater.write=true. */
    public static void compare(Path page, String part, String tables) throws IOException {
        String made = tables.replace("\n## ", "\n### ");
        String text = Files.readString(page);
        String begin = "<!-- " + part + ": made from the code -->\n";
        String end = "<!-- end of " + part + " -->";
        int from = text.indexOf(begin);
        int to = text.indexOf(end);
        assertTrue(from >= 0 && to > from, page + " must have a part " + part);
        if (Boolean.getBoolean("slackwater.write")) {
            Files.writeString(page, text.substring(0, from + begin.length()) + made + "\n" + text.substring(to));
            return;
        }
        assertEquals(made + "\n", text.substring(from + begin.length(), to));
    }
}
