package slackwater.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.scenario.Scenario;

/**
 * What a search came to. Only layouts that were confirmed on fine cells are in it.
 *
 * @param screened trials on large cells
 * @param failed how many of them had no reading
 * @param proposals confirmed layouts that the keeper's rules allow, best first as they are
 * @param best of them the one that keeps most corals in range when pumps are weaker and aims are off; of equal ones the
 *     first; empty where every confirmation failed
 * @param asItIs the scenario's own layout, confirmed too, whether or not it is allowed or has these pumps; empty where
 *     it has none or could not be computed
 */
public record Placing(int screened, int failed, List<Proposal> proposals, Optional<Proposal> best,
                      Optional<Finding> asItIs) {
    /** Large cells mistake some layouts for good ones: so many are looked at again for each that is confirmed. */
    public static final int SIFTED_PER_CONFIRMED = 3;

    /**
     * Searches on large cells, sifts the best on smaller ones, confirms the best few of those on fine ones, the start
     * among them, and tries in the order of their rank what they keep, until no later one could keep more.
     *
     * @param few how many to confirm beside the start
     */
    public static Placing of(Search search, Runs runs, int few) {
        return confirmed(search.task(), search.run(runs.screen()), runs, few);
    }

    /** The same from trials that were screened before, best first. */
    static Placing confirmed(Task task, List<Ranked> screened, Runs runs, int few) {
        List<Ranked> sifted = Search.bestFew(screened, SIFTED_PER_CONFIRMED * few).stream()
                .map(one -> task.rank(runs.sift().of(task.with(one.trial().pumps())))).toList();
        List<Ranked> confirmed = new ArrayList<>();
        for (Ranked one : Search.bestFew(Island.sorted(sifted), few)) {
            confirmed.add(task.rank(runs.confirm().of(task.with(one.trial().pumps()))));
        }
        if (task.startIsAllowed() && confirmed.stream().noneMatch(one -> isStart(task, one))) {
            confirmed.add(task.rank(runs.confirm().of(task.scenario())));
        }
        List<Proposal> proposals = new ArrayList<>();
        Optional<Proposal> best = Optional.empty();
        int most = -1;
        for (Ranked one : Island.sorted(confirmed).stream().filter(Ranked::isRead).toList()) {
            Optional<Sturdiness> sturdiness = one.finding().inRange() > most
                    ? Optional.of(sturdiness(task, one, runs.hold())) : Optional.empty();
            Proposal proposal = new Proposal(one, sturdiness, isStart(task, one));
            proposals.add(proposal);
            if (proposal.kept().orElse(-1) > most) {
                most = proposal.kept().orElse(-1);
                best = Optional.of(proposal);
            }
        }
        int failed = (int) screened.stream().filter(one -> !one.isRead()).count();
        return new Placing(screened.size(), failed, List.copyOf(proposals), best, asItIs(task, runs.confirm()));
    }

    private static Optional<Finding> asItIs(Task task, Trials confirm) {
        if (task.scenario().pumps().isEmpty() && task.scenario().returnLine().isEmpty()) {
            return Optional.empty();
        }
        return confirm.of(task.scenario()).outcome() instanceof Outcome.Read read ? Optional.of(read.finding())
                : Optional.empty();
    }

    private static Sturdiness sturdiness(Task task, Ranked one, Trials hold) {
        Scenario scenario = task.with(one.trial().pumps());
        return Sturdiness.of(scenario, one.finding(), hold);
    }

    private static boolean isStart(Task task, Ranked one) {
        return one.trial().pumps().equals(task.scenario().pumps());
    }
}
