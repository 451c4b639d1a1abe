package slackwater.search;

import java.util.List;
import java.util.Optional;
import slackwater.analysis.Verdict;

/**
 * A set of pumps and the best that was found for it.
 *
 * @param set the pumps
 * @param proposal their best layout; empty where none could be confirmed
 * @param outages what is lost when one pump stops, one a pump
 * @param energy what the layout draws; empty where it is not known or there is no layout
 * @param quiet whether every pump runs at an output at which it is not heard
 * @param spare how far the outputs may go down and up; empty without a layout
 */
public record Offer(PumpSet set, Optional<Proposal> proposal, List<Sturdiness.Check> outages,
                    Optional<Energy> energy, boolean quiet, Optional<Spare> spare) {
    /** Corals in range as confirmed; 0 without a layout. */
    public int inRange() {
        return finding().map(Finding::inRange).orElse(0);
    }

    /** Corals in range as confirmed and in every way of being off; 0 without a layout. */
    public int kept() {
        return proposal.map(one -> one.kept().orElse(0)).orElse(0);
    }

    /** Corals that pass for certain at the cells that were computed. */
    public int certain() {
        return finding().map(found -> (int) found.corals().stream()
                .filter(coral -> coral.verdict() == Verdict.PASS).count()).orElse(0);
    }

    /** Whether every coral is in range as computed: every mean, however wide its doubt. */
    public boolean isInRange() {
        return finding().map(found -> found.out() == 0).orElse(false);
    }

    /** Whether every coral passes for certain. */
    public boolean isCertain() {
        return finding().map(found -> certain() == found.corals().size()).orElse(false);
    }

    public Optional<Finding> finding() {
        return proposal.map(one -> one.confirmed().finding());
    }
}
