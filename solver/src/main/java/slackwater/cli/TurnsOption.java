package slackwater.cli;

import picocli.CommandLine.Option;

/** How long a run on fine cells may go on. */
final class TurnsOption {
    private static final double LEAST = 3;

    @Option(names = "--max-turns", paramLabel = "N",
            description = "Turns of the tank's water to compute at most on fine cells, from 3 on; fewer are quicker and"
                    + " less sure (default: until the readings have settled).")
    private double turns = Double.POSITIVE_INFINITY;

    double most() {
        if (!(turns >= LEAST)) {
            throw new BadInput("--max-turns: found " + turns + ", must be 3 or more");
        }
        return turns;
    }
}
