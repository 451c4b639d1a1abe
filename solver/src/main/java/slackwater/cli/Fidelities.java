package slackwater.cli;

/**
 * The cells of a search.
 *
 * @param screenCellM edge of a cell while looking, metres
 * @param cellSizeM edge of a cell for what is reported, metres
 * @param turns of the water on fine cells at most; infinite until the readings have settled
 * @param pumpFraction how far the pumps may be off together, as a share
 * @param seed of the pumps' turbulence
 * @param threads to compute on
 */
record Fidelities(double screenCellM, double cellSizeM, double turns, double pumpFraction, long seed, int threads) {
    /** @param knownFraction how far off the pumps themselves say they may be; an option goes before it */
    static Fidelities of(SearchOptions search, double knownFraction) {
        GridOptions grid = search.grid();
        return new Fidelities(search.screenCellM(), grid.cellSizeM(), search.turns().most(),
                search.pumpFraction(knownFraction), grid.seed(), grid.threads());
    }

    /** Edge of a cell for the second look and for what holds: half-way between the others in ratio, in whole mm. */
    double siftCellM() {
        return screenCellM <= cellSizeM ? cellSizeM : Math.round(1000 * Math.sqrt(screenCellM * cellSizeM)) / 1000.0;
    }

    Fidelity screen(double factor) {
        return Fidelity.quick(screenCellM, factor, seed);
    }

    Fidelity confirm() {
        return Fidelity.full(cellSizeM, turns, pumpFraction, seed).withGrains();
    }

    Fidelity sift(double factor) {
        return Fidelity.quick(siftCellM(), factor, seed);
    }
}
