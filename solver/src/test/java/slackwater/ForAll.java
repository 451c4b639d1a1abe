package slackwater;

import java.util.Random;
import java.util.function.Consumer;

/** Checks a law on many random inputs; a failure names the seed that repeats it. */
public final class ForAll {
    private ForAll() {
    }

    public static void seeds(int count, Consumer<Random> law) {
        for (long seed = 1; seed <= count; seed++) {
            try {
                law.accept(new Random(seed));
            } catch (AssertionError | RuntimeException broken) {
                throw new AssertionError("broken for seed " + seed, broken);
            }
        }
    }
}
