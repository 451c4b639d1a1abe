package slackwater.cli;

/** What the program says to the shell. */
final class ExitCode {
    static final int DONE = 0;
    static final int INTERNAL = 1;
    static final int BAD_INPUT = 2;
    static final int NOT_SETTLED = 3;
    static final int VERDICT_FAIL = 10;

    private ExitCode() {
    }
}
