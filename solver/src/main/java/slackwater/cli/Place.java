package slackwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.pump.catalogue.PumpModel;
import slackwater.report.LayoutPicture;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.scenario.ScenarioWriter;
import slackwater.search.CoralFinding;
import slackwater.search.Placing;
import slackwater.search.Proposal;
import slackwater.search.PumpSet;
import slackwater.search.Search;
import slackwater.search.Task;

/** Looks for the best places of given pumps. */
@Command(name = "place", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Looks where to put the pumps of a tank, how to aim them and how far to turn them up.",
        footer = {"", "Looks on large cells, confirms the best few on fine ones, and reports only those.",
            "Stopped or killed, it goes on where it was when it is started again with the same --out.",
            "Writes best.toml, layout.svg, placing.txt and trials.jsonl.",
            "Exit codes: 0 every coral is in range, 10 one is not, 2 bad input, 3 nothing could be confirmed.",
            "", "Examples:", "  slackwater place scenarios/terrace-120.toml --estimate",
            "  slackwater place scenarios/terrace-120.toml --budget 100",
            "  slackwater place my-tank.toml --pumps mid-propeller,mid-propeller --wishes my-wishes.toml",
            "  slackwater place my-tank.toml --budget 400 --shard 2/4    one of four machines",
            "  slackwater place my-tank.toml --budget 400 --parts 4 --merge a.jsonl,b.jsonl,c.jsonl,d.jsonl"})
final class Place implements Callable<Integer> {
    private static final int CONFIRMED = 3;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file (.toml).")
    private Path file;

    @Option(names = "--parts", paramLabel = "N", defaultValue = "1",
            description = "In how many parts the search is cut (default ${DEFAULT-VALUE}; as for --shard I/N).")
    private int parts;

    @Mixin
    private SearchOptions search;

    @Override
    public Integer call() throws ScenarioFaults, IOException {
        Scenario scenario = ScenarioReader.read(file);
        Cost.requireRoom(scenario, Math.min(search.grid().cellSizeM(), search.screenCellM()));
        Shard part = search.shard();
        List<PumpModel> models = search.models(file, 0);
        Task task = new Task(scenario, Pieces.of(scenario, models), search.wishes(), search.objective());
        Pieces.require(task);
        Search plan = plan(task, part);
        Fidelities fidelities = Fidelities.of(search, new PumpSet(models).doubtFraction());
        Estimate estimate = Estimate.of(task, fidelities, share(part), part.isPart() ? 0 : search.few(CONFIRMED));
        out().println(estimate.sentence());
        if (search.estimate()) {
            return ExitCode.DONE;
        }
        return run(plan, part, fidelities, estimate);
    }

    private int run(Search plan, Shard part, Fidelities fidelities, Estimate estimate) throws IOException {
        Path folder = search.directory(file, "place");
        try (LogFile log = LogFile.open(folder.resolve(part.logName()), out())) {
            search.merge(log, out());
            TrialLine line = new TrialLine(out(), estimate);
            out().println("First the tank as it is, on cells of every size.");
            Stages stages = Stages.of(plan.task().scenario(), fidelities, log.log(), line);
            if (part.isPart()) {
                int made = plan.island(part.number(), stages.runs().screen()).size();
                out().println("Part " + part.number() + " of " + part.of() + " is done: " + made + " trials in "
                        + folder.resolve(part.logName()) + ". When all parts are, put them together with --parts "
                        + part.of() + " --merge and the logs.");
                return ExitCode.DONE;
            }
            Placing placing = Placing.of(plan, stages.runs(), search.few(CONFIRMED));
            List<String> text = PlacingText.of(plan.task(), placing, fidelities, stages);
            out().println();
            text.forEach(out()::println);
            write(folder, plan.task().scenario(), placing, text);
            return code(placing);
        }
    }

    private void write(Path folder, Scenario scenario, Placing placing, List<String> text) {
        OutFile.write(folder.resolve("placing.txt"), text);
        if (placing.best().isPresent()) {
            Proposal proposal = placing.best().get();
            Scenario best = scenario.with(proposal.confirmed().trial().pumps());
            OutFile.write(folder.resolve("layout.svg"), LayoutPicture.of(best,
                    proposal.isStart() ? List.of() : scenario.pumps(), proposal.confirmed().finding().corals().stream()
                            .map(CoralFinding::verdict).toList()));
            OutFile.write(folder.resolve("best.toml"), "# The best layout found; see placing.txt. Scanned rock is"
                    + " looked for beside this file.\n" + ScenarioWriter.write(best));
        }
        out().println("Written to " + folder + ": placing.txt, trials.jsonl"
                + (placing.best().isPresent() ? ", best.toml, layout.svg" : ""));
    }

    private static int code(Placing placing) {
        if (placing.best().isEmpty()) {
            return ExitCode.NOT_SETTLED;
        }
        Proposal best = placing.best().get();
        return best.confirmed().finding().out() == 0 ? ExitCode.DONE : ExitCode.VERDICT_FAIL;
    }

    private Search plan(Task task, Shard part) {
        int of = part.isPart() ? part.of() : parts;
        if (of < 1 || of > search.budget()) {
            throw new BadInput((part.isPart() ? "--shard: found " + of + " parts" : "--parts: found " + of)
                    + ", must be 1 to the budget of " + search.budget() + " trials; take fewer parts or a larger"
                    + " --budget");
        }
        return new Search(task, search.budget(), of, search.grid().seed());
    }

    private int share(Shard part) {
        return part.isPart() ? (search.budget() + part.of() - 1) / part.of() : search.budget();
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
