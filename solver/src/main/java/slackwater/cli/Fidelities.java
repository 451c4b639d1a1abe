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
    static Fidelities of(SearchOptions search, GridOptions grid, double pumpFraction) {
        return new Fidelities(search.screenCellM(), grid.cellSizeM(), search.turns().most(), pumpFraction,
                grid.seed(), grid.threads());
    }

    Fidelity screen(double factor) {
        return Fidelity.quick(screenCellM, factor, seed);
    }

    Fidelity confirm() {
        return Fidelity.full(cellSizeM, turns, pumpFraction, seed);
    }

    Fidelity hold() {
        return Fidelity.quick(cellSizeM * Stages.HOLD_RATIO, 1, seed);
    }
}
