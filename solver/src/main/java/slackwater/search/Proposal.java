package slackwater.search;

import java.util.HashSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A layout that was confirmed on fine cells.
 *
 * @param confirmed its trial on fine cells
 * @param sturdiness whether it holds when something is a little off; empty where that was not tried, since a better one
 *     keeps as many corals as this one has in range
 * @param isStart whether it is the layout of the scenario
 */
public record Proposal(Ranked confirmed, Optional<Sturdiness> sturdiness, boolean isStart) {
    /** Whether it was tried and keeps every coral that it has in range. */
    public boolean holds() {
        return sturdiness.map(Sturdiness::holds).orElse(false);
    }

    /** How many corals are in range as it is and in every way of being off; empty where that was not tried. */
    public OptionalInt kept() {
        if (sturdiness.isEmpty()) {
            return OptionalInt.empty();
        }
        Set<String> fallen = new HashSet<>();
        sturdiness.get().checks().forEach(check -> fallen.addAll(check.fallen()));
        return OptionalInt.of(confirmed.finding().inRange() - fallen.size());
    }
}
