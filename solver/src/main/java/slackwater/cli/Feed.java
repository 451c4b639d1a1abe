package slackwater.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.analysis.Assessor;
import slackwater.analysis.StillWater;
import slackwater.backend.cpu.CpuBackend;
import slackwater.detritus.Feeding;
import slackwater.detritus.Grain;
import slackwater.detritus.Grains;
import slackwater.detritus.Tracker;
import slackwater.field.FlowRecord;
import slackwater.geometry.Vec3;
import slackwater.report.FeedingReport;
import slackwater.report.Report;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.simulation.RunLimits;
import slackwater.simulation.RunOutcome;

/** Feeds the tank and says where the food goes. */
@Command(name = "feed", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Feeds the tank at one place and says where the food is after 1, 5 and 15 minutes.",
        footer = {"", "Computes the water first, from rest, about as long as 'run', and then plays it again and again."
            + " Writes feed.html, feed.csv and grains.vtp.",
            "Exit codes: 0 done, 2 bad input, 3 the computation ran away, 1 internal error.",
            "", "Examples:", "  slackwater feed scenarios/terrace-120.toml --at 60,15,46",
            "  slackwater feed my-tank.toml --at 30,20,40 --what pellets --grams 1 --cell-cm 2"})
final class Feed implements Callable<Integer> {
    private static final double MOST_GRAMS = 1000;
    private static final double G_PER_KG = 1000;
    private static final double CM_PER_M = 100;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file (.toml).")
    private Path file;

    @Option(names = "--at", paramLabel = "X,Y,Z", required = true,
            description = "Where, centimetres from the left, from the front, from the bottom; in the water.")
    private String at;

    @Option(names = "--what", paramLabel = "NAME", defaultValue = Grains.FOOD,
            description = "food, pellets, waste, floc, sand, or a [[material]] of the scenario (default"
                    + " ${DEFAULT-VALUE}).")
    private String what;

    @Option(names = "--grams", paramLabel = "G", defaultValue = "2",
            description = "How much, grams (default ${DEFAULT-VALUE}). Shares do not depend on it.")
    private double grams;

    @Option(names = "--max-seconds", paramLabel = "S",
            description = "Most water time to compute, seconds (default: until the readings have settled).")
    private double mostWaterS = Double.POSITIVE_INFINITY;

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for the results (default out/<scenario>-feed).")
    private Path directory;

    @Mixin
    private GridOptions options;

    @Override
    public Integer call() throws ScenarioFaults {
        Scenario scenario = ScenarioReader.read(file);
        Cost.requireRoom(scenario, options.cellSizeM());
        if (!(grams > 0 && grams <= MOST_GRAMS)) {
            throw new BadInput("--grams: found " + grams + ", must be above 0, at most 1000 (typical 1 to 5)");
        }
        if (!(mostWaterS > 0)) {
            throw new BadInput("--max-seconds: found " + mostWaterS + ", must be above 0");
        }
        Setup setup = Setup.of(scenario, options.cellSizeM(), options.seed());
        Feeding.Portion portion = new Feeding.Portion(grain(scenario), grams / G_PER_KG, place(setup));
        Path target = directory == null ? Path.of("out", Names.of(file) + "-feed") : directory;
        Report.requireWritable(target);
        Computation computation = new Computation(out(), new CpuBackend(options.threads()),
                new RunLimits(mostWaterS));
        RunOutcome outcome = computation.runRecorded(setup);
        if (!(outcome instanceof RunOutcome.Averaged averaged) || computation.record().isEmpty()) {
            spec.commandLine().getErr().println("The computation of the water ran away; 'slackwater run' says where."
                    + " Nothing was written.");
            return ExitCode.NOT_SETTLED;
        }
        FlowRecord record = computation.record().get();
        Feeding feeding = Feeding.of(scenario, record, portion,
                new Tracker.Chance(options.seed(), options.threads()));
        float[] still = Assessor.assess(scenario, averaged.statistics(), averaged.series(), averaged.quality())
                .stillWater().probability();
        FeedingReport report = new FeedingReport(scenario, averaged.statistics(), feeding,
                feeding.within(record, likely(still)));
        report.write(target);
        out().print(report.table());
        out().println("Written to " + target + ": " + String.join(", ", FeedingReport.FILES));
        return ExitCode.DONE;
    }

    private static boolean[] likely(float[] still) {
        boolean[] likely = new boolean[still.length];
        for (int cell = 0; cell < still.length; cell++) {
            likely[cell] = still[cell] > StillWater.LIKELY;
        }
        return likely;
    }

    private Grain grain(Scenario scenario) {
        List<Grain> known = Grains.of(scenario);
        return known.stream().filter(grain -> grain.name().equals(what)).findFirst()
                .orElseThrow(() -> new BadInput("--what: found '" + what + "', must be one of "
                        + known.stream().map(Grain::name).collect(Collectors.joining(", "))
                        + "; describe your own as a [[material]] in the scenario file"));
    }

    private Vec3 place(Setup setup) {
        String[] parts = at.split(",", -1);
        double[] cm = new double[3];
        for (int n = 0; n < 3 && parts.length == 3; n++) {
            String part = parts[n].strip();
            cm[n] = part.matches("-?[0-9]+(\\.[0-9]*)?") ? Double.parseDouble(part) : Double.NaN;
        }
        Vec3 place = new Vec3(cm[0], cm[1], cm[2]).times(1 / CM_PER_M);
        if (parts.length != 3 || !Double.isFinite(place.length())) {
            throw new BadInput("--at: found '" + at + "', must be three numbers in centimetres, such as 60,25,40");
        }
        Vec3 inside = setup.scenario().tank().insideM();
        double level = setup.scenario().tank().waterLevelM();
        boolean outside = place.x() < 0 || place.y() < 0 || place.z() < 0 || place.x() > inside.x()
                || place.y() > inside.y() || place.z() > level;
        if (outside || setup.voxels().solid()[setup.voxels().grid().indexAt(place)]) {
            throw new BadInput(String.format(Locale.ROOT, "--at: found '%s', %s; must be in the water: 0 to %.0f, 0 to"
                    + " %.0f, 0 to %.0f cm, and not in rock or sand", at, outside ? "outside the water"
                    : "in rock or sand", inside.x() * CM_PER_M, inside.y() * CM_PER_M, level * CM_PER_M));
        }
        return place;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
