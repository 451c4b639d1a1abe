package slackwater.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import slackwater.pump.catalogue.PumpModel;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.search.Energy;
import slackwater.search.Objective;
import slackwater.search.Offer;
import slackwater.search.Placing;
import slackwater.search.Proposal;
import slackwater.search.PumpSet;
import slackwater.search.Ranked;
import slackwater.search.Search;
import slackwater.search.Spare;
import slackwater.search.Sturdiness;
import slackwater.search.Task;
import slackwater.search.TrialLog;
import slackwater.search.Wishes;

/** Looks for the best layout of each of several sets of pumps, with the same effort. */
final class Comparison {
    private final Scenario scenario;
    private final Wishes wishes;
    private final Objective objective;
    private final Fidelities fidelities;
    private final Effort effort;

    /**
     * What each set gets.
     *
     * @param budget trials on large cells
     * @param few layouts on fine cells
     */
    record Effort(int budget, int few) {
    }

    Comparison(Scenario scenario, Wishes wishes, Objective objective, Fidelities fidelities, Effort effort) {
        this.scenario = scenario;
        this.wishes = wishes;
        this.objective = objective;
        this.fidelities = fidelities;
        this.effort = effort;
    }

    Scenario scenario() {
        return scenario;
    }

    Wishes wishes() {
        return wishes;
    }

    Fidelities fidelities() {
        return fidelities;
    }

    Task task(PumpSet set) {
        return new Task(scenario, set.pieces(), wishes, objective);
    }

    /**
     * What a comparison would take.
     *
     * @param oneSetS one set, seconds
     * @param onceS what is computed once for all of them, seconds
     * @param each what a set's trials take, those of the largest set of each model averaged
     */
    record Course(double oneSetS, double onceS, Estimate each) {
        double allS(int sets) {
            return sets * oneSetS + onceS;
        }

        double perHour() {
            return 3600 / Math.max(0.01, each.screenS());
        }
    }

    Course estimate(List<PumpSet> sets) {
        List<Estimate> measured = measured(sets);
        double screenS = mean(measured, Estimate::screenS);
        double confirmS = mean(measured, Estimate::confirmS);
        double holdS = mean(measured, Estimate::holdS);
        int holds = effort.few() * Placing.SIFTED_PER_CONFIRMED + Sturdiness.runs(scenario) + mostPumps(sets);
        Estimate each = new Estimate(effort.budget(), screenS, effort.few(), confirmS, holds, holdS, fidelities);
        return new Course(each.totalS(), 2 * confirmS, each);
    }

    private static int mostPumps(List<PumpSet> sets) {
        return sets.stream().mapToInt(set -> set.models().size()).max().orElse(0);
    }

    private static double mean(List<Estimate> measured, ToDoubleFunction<Estimate> figure) {
        return measured.stream().mapToDouble(figure).average().orElse(0);
    }

    private List<Estimate> measured(List<PumpSet> sets) {
        List<PumpModel> models = sets.stream().flatMap(set -> set.models().stream()).distinct().toList();
        return models.stream().map(model -> sets.stream().filter(set -> set.models().contains(model))
                .reduce((one, other) -> other.models().size() >= one.models().size() ? other : one).orElseThrow())
                .distinct().map(set -> Estimate.of(task(set), fidelities, effort.budget(), effort.few())).toList();
    }

    /** An offer for no pumps at all, then one a set, in their order. */
    List<Offer> run(List<PumpSet> sets, Course course, TrialLog log, PrintWriter out) {
        List<Offer> offers = new ArrayList<>();
        out.println("First the tank as it is, on cells of every size.");
        Stages stages = Stages.of(scenario, fidelities, log, new TrialLine(
                new PrintWriter(Writer.nullWriter()), course.each()));
        out.println("Without circulation pumps");
        offers.add(withoutPumps(stages));
        for (int n = 0; n < sets.size(); n++) {
            out.println(String.format(Locale.ROOT, "Set %d of %d, about %s left in all: %s", n + 1, sets.size(),
                    Cost.time((sets.size() - n) * course.oneSetS()), sets.get(n).label()));
            out.flush();
            offers.add(offer(sets.get(n), stages, new TrialLine(out, course.each()), log));
        }
        return List.copyOf(offers);
    }

    /** What the return does alone, or nothing at all: what every purchase is to be measured against. */
    private Offer withoutPumps(Stages stages) {
        Scenario bare = scenario.with(List.of());
        Ranked ranked = new Ranked(stages.runs().confirm().of(bare), 0);
        Optional<Proposal> proposal = ranked.isRead()
                ? Optional.of(new Proposal(ranked, Optional.of(new Sturdiness(List.of())), false)) : Optional.empty();
        return new Offer(new PumpSet(List.of()), proposal, List.of(), Optional.of(Energy.of(0, wishes)), true,
                Optional.empty());
    }

    private Offer offer(PumpSet set, Stages anchored, TrialLine line, TrialLog log) {
        Stages stages = anchored.watched(fidelities, log, line);
        Task task = task(set);
        Placing placing = Placing.of(new Search(task, effort.budget(), 1, fidelities.seed()), stages.runs(),
                effort.few());
        if (placing.best().isEmpty()) {
            return new Offer(set, Optional.empty(), List.of(), Optional.empty(), true, Optional.empty());
        }
        Proposal best = placing.best().get();
        List<Pump> pumps = best.confirmed().trial().pumps();
        Scenario layout = scenario.with(pumps);
        OptionalDouble watts = Energy.powerW(task.pieces(), pumps);
        return new Offer(set, placing.best(), Sturdiness.outages(layout, best.confirmed().finding(),
                stages.runs().hold()),
                watts.isEmpty() ? Optional.empty() : Optional.of(Energy.of(watts.getAsDouble(), wishes)),
                Energy.isQuiet(task.pieces(), pumps), Spare.of(layout, task.pieces(), best.confirmed().finding()));
    }
}
