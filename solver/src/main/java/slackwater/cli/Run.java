package slackwater.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
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
import slackwater.analysis.Assessment;
import slackwater.analysis.Assessor;
import slackwater.analysis.Evidence;
import slackwater.analysis.Figures;
import slackwater.analysis.Verdict;
import slackwater.backend.Backend;
import slackwater.backend.cpu.CpuBackend;
import slackwater.detritus.Litter;
import slackwater.detritus.Tracker;
import slackwater.detritus.Trials;
import slackwater.discretisation.Discretisation;
import slackwater.geometry.Vec3;
import slackwater.report.Artist;
import slackwater.report.Artwork;
import slackwater.report.MeshCopies;
import slackwater.report.Report;
import slackwater.report.TerminalTable;
import slackwater.result.FlowResult;
import slackwater.result.Provenance;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.simulation.RunLimits;
import slackwater.simulation.RunOutcome;
import slackwater.simulation.RunOutcome.Averaged;
import slackwater.simulation.RunOutcome.Diverged;

/** The main job: from a scenario file to a verdict. */
@Command(name = "run", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Computes the water in a tank and judges every coral and every still corner.",
        footer = {"", "Writes report.html, corals.csv, result.json, flow.vti and grains.vtp.",
            "Exit codes: 0 done, 10 a coral fails, 2 bad input, 3 not settled or diverged, 1 internal error.",
            "", "Examples:", "  slackwater run scenarios/terrace-120.toml",
            "  slackwater run my-tank.toml --cell-cm 2        a first look, 16 times quicker",
            "  slackwater run my-tank.toml --pump-uncertainty 20%%   pumps a fifth off",
            "  slackwater run my-tank.toml --out results/a    where the report goes"})
final class Run implements Callable<Integer> {
    private static final double LONGEST_UNASKED_S = 24 * 3600;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file (.toml).")
    private Path file;

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for the results (default out/<scenario>).")
    private Path directory;

    @Option(names = "--max-seconds", paramLabel = "S",
            description = "Most water time to compute, seconds; three batches of about one turn of the water are"
                    + " computed in any case (default: until the readings have settled).")
    private double mostWaterS = Double.POSITIVE_INFINITY;

    @Option(names = "--no-grains",
            description = "Leave out sand, food and waste: no clearing of corals, no map of what lies where.")
    private boolean noGrains;

    @Mixin
    private GridOptions options;

    @Mixin
    private DoubtOptions doubt;

    private final Artist artist;

    Run(Artist artist) {
        this.artist = artist;
    }

    @Override
    public Integer call() throws ScenarioFaults {
        Scenario scenario = ScenarioReader.read(file);
        Cost.requireRoom(scenario, options.cellSizeM());
        if (!(mostWaterS > 0)) {
            throw new BadInput("--max-seconds: found " + mostWaterS + ", must be above 0");
        }
        double companionM = options.cellSizeM() * doubt.ratio();
        double pumpFraction = doubt.pumpFraction();
        Path target = directory == null ? Path.of("out", Names.of(file)) : directory;
        Backend backend = new CpuBackend(options.threads());

        Setup setup = Setup.of(scenario, options.cellSizeM(), options.seed());
        Cost.requireAble(backend, setup.discretisation().problem());
        Provenance provenance = Origins.of(file, setup.discretisation(), options);
        Report.requireWritable(target);
        announce(setup.discretisation());
        Computation computation = new Computation(out(), backend, new RunLimits(mostWaterS));
        Companion companion = Companion.of(scenario, companionM, options.seed(), computation::run);
        Setup begun = setup.begunWith(companion.ending());
        RunOutcome outcome = noGrains ? computation.run(begun) : computation.runRecorded(begun);
        if (outcome instanceof Diverged diverged) {
            return diverged(diverged);
        }
        Averaged averaged = (Averaged) outcome;
        Companion compared = doubt.oneGrid() ? Companion.LEFT_OUT : companion;
        Evidence evidence = new Evidence(compared.flow(), compared.remark(), pumpFraction);
        List<Double> doubts = Assessor.speedDoubts(scenario, averaged.statistics(), averaged.series(), evidence);
        Assessment assessment = Assessor.assess(scenario, averaged.statistics(), averaged.series(),
                averaged.quality(), evidence.with(litter(scenario, computation, doubts)));
        FlowResult result = new FlowResult(provenance, scenario, averaged.quality(), assessment,
                setup.voxels().grid());
        Artwork artwork = artist.draw(result, averaged.statistics());
        Report.write(result, averaged.statistics(), artwork, target);
        MeshCopies.put(scenario, file, target);
        out().print(TerminalTable.of(result));
        out().println(artwork.remark());
        out().println("Written to " + target + ": " + String.join(", ", Report.FILES));
        if (outcome instanceof RunOutcome.NotSettled) {
            return ExitCode.NOT_SETTLED;
        }
        return assessment.verdict() == Verdict.FAIL ? ExitCode.VERDICT_FAIL : ExitCode.DONE;
    }

    /** Sand, food and waste in the water that was recorded. */
    private Optional<Litter> litter(Scenario scenario, Computation computation, List<Double> doubts) {
        return computation.record().map(record -> Trials.make(scenario, record, doubts,
                new Tracker.Chance(options.seed(), options.threads())));
    }

    /** Says on a terminal what is to come, and refuses what nobody waits for unless they said so. */
    private void announce(Discretisation discretisation) {
        Cost cost = Cost.of(discretisation, options.threads(), doubt.ratio());
        if (cost.leastS() > LONGEST_UNASKED_S && Double.isInfinite(mostWaterS)) {
            throw new BadInput("this run would take " + Cost.time(cost.leastS()) + " at least: take larger cells"
                    + " (--cell-cm), or say how much water time to compute (--max-seconds)");
        }
        if (Terminal.present()) {
            out().println("Computing " + cost.sentence() + ", and before that the same tank on cells of "
                    + Figures.cell(options.cellSizeM() * doubt.ratio()) + ".");
        }
    }

    private int diverged(Diverged diverged) {
        Vec3 at = diverged.atM();
        spec.commandLine().getErr().println(String.format(Locale.ROOT, "The computation ran away after %.2f s of"
                + " water at x %.0f, y %.0f, z %.0f cm. %s Nothing was written.", diverged.waterTimeS(), at.x() * 100,
                at.y() * 100, at.z() * 100, diverged.advice()));
        return ExitCode.NOT_SETTLED;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
