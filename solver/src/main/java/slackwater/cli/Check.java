package slackwater.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.Sloshing;
import slackwater.analysis.Turnover;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Voxels;
import slackwater.pump.JetSource;
import slackwater.scenario.Coral;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.scenario.Tank;
import slackwater.units.Seawater;

/** Reads a scenario, says what was understood and what a run would cost; writes nothing. */
@Command(name = "check", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Checks a scenario file and says what was understood and what a run would cost.",
        footer = {"", "Writes nothing. Exit codes: 0 fit to run, 2 with every fault that was found.",
            "", "Examples:", "  slackwater check my-tank.toml",
            "  slackwater check my-tank.toml --cell-cm 0.5    cost on a finer grid"})
final class Check implements Callable<Integer> {
    private static final double LITRES = 1000;
    private static final double LITRES_PER_HOUR = 3.6e6;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "The scenario file (.toml).")
    private Path file;

    @Mixin
    private GridOptions options;

    @Override
    public Integer call() throws ScenarioFaults {
        Scenario scenario = ScenarioReader.read(file);
        Cost.requireRoom(scenario, options.cellSizeM());
        Setup setup = Setup.of(scenario, options.cellSizeM(), options.seed());
        Voxels voxels = setup.voxels();
        Cost.requireAble(new CpuBackend(options.threads()), setup.discretisation().problem());
        double waterM3 = voxels.waterCells() * voxels.grid().cellVolumeM3();
        say("%s", scenario.name());
        tank(scenario, voxels, waterM3);
        scenario.pumps().forEach(this::pump);
        scenario.returnLine().ifPresent(line -> say("  return: %.0f l/h, jet %.2f m/s",
                line.flowM3PerS() * LITRES_PER_HOUR, JetSource.of(line).slipstreamMPerS(0)));
        scenario.corals().forEach(this::coral);
        Turnover turnover = Turnover.of(scenario, waterM3);
        say("  turnover: pumps %.0f times an hour, return %.1f times an hour", turnover.pumpsPerHour(),
                turnover.returnPerHour());
        say("    %s", Turnover.NOTE);
        Sloshing.warnings(scenario).forEach(warning -> say("  %s", warning));
        say("A run at %.3g cm: %s.", options.cellSizeM() * 100, Cost.of(setup.discretisation(),
                options.threads(), DoubtOptions.USUAL_RATIO).sentence());
        return ExitCode.DONE;
    }

    private void tank(Scenario scenario, Voxels voxels, double waterM3) {
        Tank tank = scenario.tank();
        say("  tank: %.0f x %.0f x %.0f cm inside, water to %.0f cm, sand %.1f cm (%.2g mm grains)",
                tank.insideM().x() * 100, tank.insideM().y() * 100, tank.insideM().z() * 100,
                tank.waterLevelM() * 100, tank.sandDepthM() * 100, tank.sandGrainM() * 1000);
        double rockM3 = voxels.rockCells() * voxels.grid().cellVolumeM3();
        say("  water: %.0f l, with rocks taking up %.0f l: %s", waterM3 * LITRES, rockM3 * LITRES,
                scenario.rocks().isEmpty() ? "no rocks"
                        : String.join(", ", scenario.rocks().stream().map(Rock::name).toList()));
    }

    private void pump(Pump pump) {
        JetSource jet = JetSource.of(pump);
        say("  pump '%s': %.0f l/h as set, jet %.2f m/s, thrust %.2f N", pump.name(),
                jet.flowM3PerS() * LITRES_PER_HOUR, jet.slipstreamMPerS(0),
                jet.momentumFluxM4PerS2() * Seawater.DENSITY_KG_PER_M3);
    }

    private void coral(Coral coral) {
        var range = CoralNeeds.rangeFor(coral);
        say("  coral '%s': wants %.0f to %.0f cm/s", coral.name(), range.lowMPerS() * 100, range.highMPerS() * 100);
    }

    private void say(String format, Object... values) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(String.format(Locale.ROOT, format, values));
    }
}
