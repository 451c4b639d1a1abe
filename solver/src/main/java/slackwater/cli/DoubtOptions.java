package slackwater.cli;

import picocli.CommandLine.Option;

/** Options that say how doubt is found. */
final class DoubtOptions {
    static final double USUAL_RATIO = 2;
    private static final double LEAST_RATIO = 1.25;
    private static final double MOST_RATIO = 3;

    @Option(names = "--one-grid",
            description = "Leave out the comparison with the companion on larger cells: the readings are the same,"
                    + " but the ranges then hold chance only, not what the size of the cells does.")
    private boolean oneGrid;

    @Option(names = "--grid-ratio", paramLabel = "RATIO",
            description = "How much larger the cells of the companion are, 1.25 to 3 (default ${DEFAULT-VALUE}, which"
                    + " adds about a sixteenth to the time).")
    private double ratio = USUAL_RATIO;

    @Option(names = "--pump-uncertainty", paramLabel = "PERCENT", defaultValue = "0",
            description = "How far all pumps and the return may be off together, such as 20%% (0 to 60, default"
                    + " ${DEFAULT-VALUE}: taken at their word).")
    private String pumps;

    boolean oneGrid() {
        return oneGrid;
    }

    /** @throws BadInput if it is out of bounds */
    double ratio() {
        if (!(ratio >= LEAST_RATIO && ratio <= MOST_RATIO)) {
            throw new BadInput("--grid-ratio: found " + ratio + ", must be " + LEAST_RATIO + " to " + MOST_RATIO
                    + " (2 compares cells of 1 cm with cells of 2 cm)");
        }
        return ratio;
    }

    /** @throws BadInput if it is no number or out of bounds */
    double pumpFraction() {
        return PumpDoubt.fraction(pumps);
    }
}
