package slackwater.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One coral through all that may come.
 *
 * @param coral its name
 * @param wantedLowMPerS slowest that it wants, metres per second
 * @param wantedHighMPerS fastest that it wants
 * @param cases one a mishap, in their order
 */
public record Endurance(String coral, double wantedLowMPerS, double wantedHighMPerS, List<Case> cases) {
    /**
     * A coral in one case.
     *
     * @param mishap its name
     * @param months of growth; empty where it is no matter of time
     * @param finding at the coral; empty where the case could not be computed or a plate has grown over it
     * @param remark why there is no finding; empty where there is one
     */
    public record Case(String mishap, OptionalInt months, Optional<CoralFinding> finding, String remark) {
        /** Whether its mean speed is outside of what it wants, or it has been grown over; unknown counts as not. */
        public boolean isOut() {
            return finding.map(found -> !found.inRange()).orElse(remark.equals(GROWN_OVER));
        }
    }

    static final String GROWN_OVER = "a plate has grown over it";

    /** One entry a coral, from what came of every case. */
    public static List<Endurance> of(List<Mishap> mishaps, List<Outcome> outcomes) {
        List<Endurance> all = new ArrayList<>();
        if (!(outcomes.get(0) instanceof Outcome.Read today)) {
            return all;
        }
        for (CoralFinding coral : today.finding().corals()) {
            List<Case> cases = new ArrayList<>();
            for (int n = 0; n < mishaps.size(); n++) {
                cases.add(caseOf(coral.name(), mishaps.get(n), outcomes.get(n)));
            }
            all.add(new Endurance(coral.name(), coral.wantedLowMPerS(), coral.wantedHighMPerS(),
                    List.copyOf(cases)));
        }
        return List.copyOf(all);
    }

    private static Case caseOf(String coral, Mishap mishap, Outcome outcome) {
        if (mishap.covered().contains(coral)) {
            return new Case(mishap.name(), mishap.months(), Optional.empty(), GROWN_OVER);
        }
        if (outcome instanceof Outcome.Read read) {
            return new Case(mishap.name(), mishap.months(), read.finding().corals().stream()
                    .filter(found -> found.name().equals(coral)).findFirst(), "");
        }
        return new Case(mishap.name(), mishap.months(), Optional.empty(), ((Outcome.Failed) outcome).why());
    }

    /** The first month at which growth puts it out of range, 0 for today; empty where it stays in. */
    public OptionalInt firstMonthOut() {
        return cases.stream().filter(one -> one.months().isPresent() && one.isOut())
                .mapToInt(one -> one.months().getAsInt()).min();
    }

    /** The cases other than growth that put it out of range, in their order. */
    public List<String> faultsOut() {
        return cases.stream().filter(one -> one.months().isEmpty() && one.isOut()).map(Case::mishap).toList();
    }
}
