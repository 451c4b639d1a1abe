package slackwater.cli;

import java.util.Locale;
import slackwater.search.Trial;

/**
 * How carefully a trial is computed.
 *
 * @param cellSizeM edge of a cell, metres
 * @param turns turns of the tank's water to compute at most; infinite until the readings have settled
 * @param companion whether the same tank is computed on larger cells too, for the doubt
 * @param factor what every speed is multiplied with, 1 on fine cells
 * @param pumpFraction how far the pumps may be off together, as a share
 * @param seed of the pumps' turbulence
 * @param grains whether food and sand are let fall on the corals
 */
record Fidelity(double cellSizeM, double turns, boolean companion, double factor, double pumpFraction, long seed,
                boolean grains) {
    /** Spin-up of three turns at least, two of averaging: the shortest from which a mean can be had. */
    private static final double SHORT_TURNS = 5;

    static Fidelity quick(double cellSizeM, double factor, long seed) {
        return new Fidelity(cellSizeM, SHORT_TURNS, false, factor, 0, seed, false);
    }

    /** @param turns at most; infinite until the readings have settled */
    static Fidelity full(double cellSizeM, double turns, double pumpFraction, long seed) {
        return new Fidelity(cellSizeM, turns, true, 1, pumpFraction, seed, false);
    }

    Fidelity withGrains() {
        return new Fidelity(cellSizeM, turns, companion, factor, pumpFraction, seed, true);
    }

    /** All of it, for the key of a trial, with the program's version and build: no log answers for other code. */
    String words() {
        return String.format(Locale.ROOT, "%s, cells of %s m, at most %s turns, %s companion, speeds times %s, pumps"
                + " off by %s, seed %d, %s grains", program(), cellSizeM, turns, companion ? "with" : "no", factor,
                pumpFraction, seed, grains ? "with" : "no");
    }

    /** Whether a trial is of this very program, so that it need not be made again. */
    static boolean isOfThisBuild(Trial trial) {
        return trial.way().startsWith(program() + ",");
    }

    private static String program() {
        return "version " + Version.number() + ", build " + Build.digest();
    }
}
