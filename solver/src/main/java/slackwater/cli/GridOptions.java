package slackwater.cli;

import picocli.CommandLine.Option;

/** Options that say how finely and on how many threads to compute. */
final class GridOptions {
    private static final double LEAST_CM = 0.1;
    private static final double MOST_CM = 10;
    private static final double CM_PER_M = 100;

    @Option(names = "--cell-cm", paramLabel = "CM", defaultValue = "1",
            description = "Edge of a cell, 0.1 to 10 cm (default ${DEFAULT-VALUE}). 2 is 16 times quicker, for a first"
                    + " look; 0.5 takes 16 times as long and narrows the ranges.")
    private double cellCm;

    @Option(names = "--threads", paramLabel = "N",
            description = "Threads to use, 1 to 1024 (default: one for each processor). The result does not depend on"
                    + " it.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1",
            description = "Seed of the pumps' turbulence (default ${DEFAULT-VALUE}).")
    private long seed;

    double cellSizeM() {
        if (!(cellCm >= LEAST_CM && cellCm <= MOST_CM)) {
            throw new BadInput("--cell-cm: found " + cellCm + ", must be " + LEAST_CM + " to " + MOST_CM
                    + " (1 for a verdict, 2 for a first look)");
        }
        return cellCm / CM_PER_M;
    }

    int threads() {
        if (threads < 1 || threads > 1024) {
            throw new BadInput("--threads: found " + threads + ", must be 1 to 1024");
        }
        return threads;
    }

    long seed() {
        return seed;
    }
}
