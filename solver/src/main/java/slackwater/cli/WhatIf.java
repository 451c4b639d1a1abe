package slackwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.analysis.Figures;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.search.Endurance;
import slackwater.search.Growth;
import slackwater.search.Mishap;
import slackwater.search.Outcome;
import slackwater.search.Stage;
import slackwater.search.Trial;
import slackwater.search.Trials;

/** What becomes of a tank when something fails or grows. */
@Command(name = "what-if", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Computes what becomes of every coral when a pump stops, pumps get dirty, at night, in a power"
                + " cut, and as plates grow.",
        footer = {"", "Stopped or killed, it goes on where it was when it is started again with the same --out.",
            "Writes what-if.txt, what-if.csv and trials.jsonl.",
            "Exit codes: 0 done, 2 bad input, 3 the tank as it is could not be computed.",
            "", "Examples:", "  slackwater what-if scenarios/terrace-120.toml --estimate",
            "  slackwater what-if my-tank.toml --cell-cm 2    a first look, 16 times quicker",
            "  slackwater what-if my-tank.toml --battery-pump left --battery-percent 40"})
final class WhatIf implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file (.toml).")
    private Path file;

    @Option(names = "--night-percent", paramLabel = "PERCENT", defaultValue = "40",
            description = "Outputs at night, as a share of what is set (default ${DEFAULT-VALUE}).")
    private double nightPercent;

    @Option(names = "--battery-pump", paramLabel = "NAME",
            description = "The pump that runs on a battery in a power cut (default: the first).")
    private String batteryPump;

    @Option(names = "--battery-percent", paramLabel = "PERCENT", defaultValue = "50",
            description = "Its output then, as a share of what is set (default ${DEFAULT-VALUE}).")
    private double batteryPercent;

    @Option(names = "--growth-cm-per-year", paramLabel = "CM", defaultValue = "3",
            description = "Growth of a plate's radius (default ${DEFAULT-VALUE}; published 1.2 to 5.8).")
    private double growthCm;

    @Option(names = "--estimate", description = "Say what it would take, and stop.")
    private boolean estimate;

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for results and the log of all runs.")
    private Path directory;

    @Mixin
    private TurnsOption turns;

    @Mixin
    private GridOptions grid;

    @Override
    public Integer call() throws ScenarioFaults, IOException {
        Scenario scenario = ScenarioReader.read(file);
        Cost.requireRoom(scenario, grid.cellSizeM());
        if (scenario.corals().isEmpty()) {
            throw new BadInput("the scenario has no coral to ask for: add a [[coral]]");
        }
        Growth growth = new Growth(share("--growth-cm-per-year", growthCm, 0, 30));
        List<Mishap> mishaps = Mishap.all(scenario, new Mishap.Severity(share("--night-percent", nightPercent, 0, 100),
                battery(scenario), share("--battery-percent", batteryPercent, 0, 100), growth, grid.cellSizeM()));
        Fidelity fidelity = Fidelity.full(grid.cellSizeM(), turns.most(), 0, grid.seed());
        double eachS = TrialCost.of(scenario, fidelity, grid.threads()).seconds();
        out().println(String.format(Locale.ROOT, "About %s in all: %d cases on cells of %s, about %s each.",
                Cost.time(eachS * mishaps.size()), mishaps.size(), Figures.cell(grid.cellSizeM()), Cost.time(eachS)));
        return estimate ? ExitCode.DONE : run(scenario, mishaps, fidelity, growth);
    }

    private int run(Scenario scenario, List<Mishap> mishaps, Fidelity fidelity, Growth growth) throws IOException {
        Path folder = directory == null ? Path.of("out", Names.of(file) + "-what-if") : directory;
        List<Outcome> outcomes = new ArrayList<>();
        try (LogFile log = LogFile.open(folder.resolve("trials.jsonl"), out())) {
            Trials trials = new Trials(Stage.CONFIRM, fidelity.words(), new WaterTrial(fidelity, grid.threads()),
                    log.log(), trial -> { });
            for (Mishap mishap : mishaps) {
                Trial trial = trials.of(mishap.scenario());
                outcomes.add(trial.outcome());
                out().println(String.format(Locale.ROOT, "  %d of %d (%s): %s", outcomes.size(), mishaps.size(),
                        Cost.time(trial.wallS()), mishap.name()));
            }
        }
        if (!(outcomes.get(0) instanceof Outcome.Read)) {
            out().println("The tank as it is could not be computed: " + ((Outcome.Failed) outcomes.get(0)).why());
            return ExitCode.NOT_SETTLED;
        }
        List<Endurance> corals = Endurance.of(mishaps, outcomes);
        List<String> text = WhatIfText.of(scenario, corals, growth, grid.cellSizeM());
        out().println();
        text.forEach(out()::println);
        OutFile.write(folder.resolve("what-if.txt"), text);
        OutFile.write(folder.resolve("what-if.csv"), WhatIfText.csv(corals));
        out().println("Written to " + folder + ": what-if.txt, what-if.csv, trials.jsonl");
        return ExitCode.DONE;
    }

    private Optional<String> battery(Scenario scenario) {
        if (batteryPump == null) {
            return Optional.empty();
        }
        List<String> names = scenario.pumps().stream().map(pump -> pump.name()).toList();
        if (!names.contains(batteryPump)) {
            throw new BadInput("--battery-pump: found '" + batteryPump + "', must be one of "
                    + String.join(", ", names));
        }
        return Optional.of(batteryPump);
    }

    /** A hundredth of an option's number, within limits. */
    private static double share(String option, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new BadInput(String.format(Locale.ROOT, "%s: found %s, must be %.0f to %.0f", option, value, low,
                    high));
        }
        return value / 100;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
