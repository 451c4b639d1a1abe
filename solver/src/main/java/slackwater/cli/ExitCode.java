package slackwater.cli;

/** What the program says to the shell. */
public final class ExitCode {
    public static final int DONE = 0;
    public static final int INTERNAL = 1;
    public static final int BAD_INPUT = 2;
    public static final int NOT_SETTLED = 3;
    public static final int VERDICT_FAIL = 10;

    private ExitCode() {
    }
}
