package slackwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.pump.catalogue.PumpModel;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.search.Front;
import slackwater.search.Offer;
import slackwater.search.PumpSet;

/** Finds out which pumps to buy. */
@Command(name = "compare", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Compares sets of pumps, each in the best layout that an equal search finds for it.",
        footer = {"", "Stopped or killed, it goes on where it was when it is started again with the same --out.",
            "Writes compare.txt, compare.csv, pareto.svg, a best layout for each set, and trials.jsonl.",
            "Exit codes: 0 one set has every coral in range as computed (the text says how many of them for certain),",
            "10 none has, 2 bad input, 3 nothing could be confirmed.",
            "", "Examples:",
            "  slackwater compare my-tank.toml --pumps small-nozzle,mid-propeller --count 1..2 --estimate",
            "  slackwater compare my-tank.toml --pumps mid-propeller,wide-cross-flow --count 2 --mixed",
            "  slackwater compare my-tank.toml --pumps a,b,c --count 1..3 --shard 1/4    one of four machines"})
final class Compare implements Callable<Integer> {
    private static final int CONFIRMED = 1;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file (.toml).")
    private Path file;

    @Option(names = "--count", paramLabel = "RANGE", defaultValue = "1..2",
            description = "How many pumps, such as 2 or 1..3 (default ${DEFAULT-VALUE}).")
    private String count;

    @Option(names = "--mixed", description = "Sets of different pumps too, not only several of one.")
    private boolean mixed;

    @Mixin
    private SearchOptions search;

    @Override
    public Integer call() throws ScenarioFaults, IOException {
        Scenario scenario = ScenarioReader.read(file);
        Cost.requireRoom(scenario, Math.min(search.grid().cellSizeM(), search.screenCellM()));
        CountRange range = CountRange.of(count);
        Shard part = search.shard();
        int few = search.few(CONFIRMED);
        List<PumpModel> models = search.models(file, 1).stream().distinct().toList();
        List<PumpSet> sets = mixed ? PumpSet.mixed(models, range.least(), range.most())
                : PumpSet.ofOneModel(models, range.least(), range.most());
        List<PumpSet> ours = ours(sets, part);
        double doubt = new PumpSet(models).doubtFraction();
        Comparison comparison = new Comparison(scenario, search.wishes(), search.objective(),
                Fidelities.of(search, doubt), new Comparison.Effort(search.budget(), few));
        ours.forEach(set -> Pieces.require(comparison.task(set)));
        Comparison.Course course = comparison.estimate(ours);
        say("%d %s of pumps, %d trials for each: about %s in all, %.0f candidates an hour while looking.", ours.size(),
                ours.size() == 1 ? "set" : "sets", search.budget(), Cost.time(course.allS(ours.size())),
                course.perHour());
        return search.estimate() ? ExitCode.DONE : run(comparison, course, ours, part);
    }

    private static List<PumpSet> ours(List<PumpSet> all, Shard part) {
        List<PumpSet> ours = new ArrayList<>();
        for (int n = 0; n < all.size(); n++) {
            if (!part.isPart() || n % part.of() == part.number() - 1) {
                ours.add(all.get(n));
            }
        }
        if (ours.isEmpty()) {
            throw new BadInput("--shard: found '" + part.number() + "/" + part.of()
                    + "', must have no more parts than there are sets of pumps, " + all.size()
                    + " here; take fewer parts");
        }
        return ours;
    }

    private int run(Comparison comparison, Comparison.Course course, List<PumpSet> sets, Shard part)
            throws IOException {
        Path folder = search.directory(file, "compare");
        List<Offer> offers;
        try (LogFile log = LogFile.open(folder.resolve(part.logName()), out())) {
            search.merge(log, out());
            offers = comparison.run(sets, course, log.log(), out());
        }
        if (part.isPart()) {
            say("Part %d of %d is done: %s. When all parts are, run without --shard, with --merge and the logs.",
                    part.number(), part.of(), folder.resolve(part.logName()));
            return ExitCode.DONE;
        }
        List<String> text = CompareText.of(offers, comparison.scenario(), comparison.wishes(), comparison.fidelities());
        out().println();
        text.forEach(out()::println);
        CompareFiles.write(folder, comparison.scenario(), offers, text);
        say("Written to %s: compare.txt, compare.csv, pareto.svg, set-1.toml and so on, trials.jsonl", folder);
        boolean none = offers.stream().allMatch(offer -> offer.proposal().isEmpty());
        return none ? ExitCode.NOT_SETTLED : Front.cheapestInRange(offers).isPresent() ? ExitCode.DONE
                : ExitCode.VERDICT_FAIL;
    }

    private void say(String format, Object... values) {
        out().println(String.format(Locale.ROOT, format, values));
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
