package slackwater.viewer.app;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.lwjgl.system.Configuration;
import slackwater.cli.Extras;
import slackwater.cli.Main;

/** The whole program: the solver's commands and those that show something. */
public final class Program {
    private static final int FOREIGN_MEMORY_IS_FINAL = 25;

    private Program() {
    }

    public static void main(String[] arguments) {
        quieten();
        Main.start(extras(), arguments);
    }

    static Extras extras() {
        return new Extras(List.of(new Watch(), new Picture(), new BenchView()), new GlArtist());
    }

    /** Newer Javas warn at every start of libraries that reach memory the old way; these two then know a new one. */
    private static void quieten() {
        if (Runtime.version().feature() >= FOREIGN_MEMORY_IS_FINAL) {
            System.setProperty("org.lwjgl.system.memoryBackend", "ffm");
            System.setProperty("joml.nounsafe", "true");
        }
        if (!Boolean.getBoolean("org.lwjgl.util.Debug")) {
            // It prints advice to programmers where a library is missing; the keeper gets a sentence from us instead.
            Configuration.DEBUG_STREAM.set(new PrintStream(OutputStream.nullOutputStream(), false,
                    StandardCharsets.UTF_8));
        }
    }
}
