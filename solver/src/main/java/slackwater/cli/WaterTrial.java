package slackwater.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import slackwater.analysis.Assessment;
import slackwater.analysis.Assessor;
import slackwater.analysis.BedAndRock;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.Evidence;
import slackwater.analysis.Probes;
import slackwater.backend.Backend;
import slackwater.backend.cpu.CpuBackend;
import slackwater.detritus.Litter;
import slackwater.detritus.Tracker;
import slackwater.detritus.Trials;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.field.FlowObserver;
import slackwater.field.FlowRecord;
import slackwater.field.FlowRecorder;
import slackwater.field.FlowStatistics;
import slackwater.field.ProbeSeries;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;
import slackwater.search.CoralFinding;
import slackwater.search.Finding;
import slackwater.search.Outcome;
import slackwater.simulation.Onlookers;
import slackwater.simulation.Progress;
import slackwater.simulation.RunLimits;
import slackwater.simulation.RunOutcome;
import slackwater.simulation.Simulator;

/** One trial of a search: the straight line from a scenario to what it does for the corals. */
final class WaterTrial implements Function<Scenario, Outcome> {
    private final Fidelity fidelity;
    private final Backend backend;
    private final int threads;
    /** The tank cut into cells; kept while only pumps move. */
    private Optional<Cut> cut = Optional.empty();

    private record Cut(List<Rock> rocks, Voxels voxels) {
    }

    WaterTrial(Fidelity fidelity, int threads) {
        this.fidelity = fidelity;
        this.backend = new CpuBackend(threads);
        this.threads = threads;
    }

    @Override
    public Outcome apply(Scenario scenario) {
        if (!anythingRuns(scenario)) {
            return new Outcome.Read(still(scenario));
        }
        try {
            Companion companion = companion(scenario);
            Setup setup = setup(scenario).begunWith(companion.ending());
            AtomicReference<FlowRecorder> recorder = new AtomicReference<>();
            RunOutcome outcome = Retry.simulate(setup, tried -> simulate(tried, recorder));
            if (outcome instanceof RunOutcome.Diverged diverged) {
                Vec3 at = diverged.atM();
                return new Outcome.Failed(String.format(Locale.ROOT, "the computation ran away at x %.0f, y %.0f, z"
                        + " %.0f cm", at.x() * 100, at.y() * 100, at.z() * 100));
            }
            Evidence evidence = new Evidence(companion.flow(), companion.remark(), fidelity.pumpFraction());
            return new Outcome.Read(read(scenario, (RunOutcome.Averaged) outcome, evidence,
                    Optional.ofNullable(recorder.get()).flatMap(FlowRecorder::record)));
        } catch (UnfitGrid unfit) {
            return new Outcome.Failed(unfit.getMessage());
        }
    }

    static boolean anythingRuns(Scenario scenario) {
        return scenario.returnLine().isPresent() || scenario.pumps().stream().anyMatch(pump ->
                pump.outputFraction() > 0 && pump.flowM3PerS() > 0 && pump.foulingFraction() < 1);
    }

    private Setup setup(Scenario scenario) {
        if (cut.isEmpty() || !cut.get().rocks().equals(scenario.rocks())) {
            cut = Optional.of(new Cut(scenario.rocks(),
                    Voxels.of(scenario.tank(), scenario.rocks(), fidelity.cellSizeM())));
        }
        Voxels voxels = cut.get().voxels();
        return new Setup(scenario, fidelity.seed(), 1, voxels, Discretiser.discretise(scenario, voxels,
                fidelity.seed()), Probes.of(scenario, voxels.grid(), voxels.fluid()));
    }

    /** With its water recorded where grains are to fall in it. */
    private RunOutcome simulate(Setup setup, AtomicReference<FlowRecorder> recorder) {
        if (!fidelity.grains()) {
            return simulate(setup, FlowObserver.NONE);
        }
        recorder.set(new FlowRecorder(setup.voxels().grid(), setup.voxels().fluid(),
                setup.discretisation().plan().batchS()));
        return simulate(setup, recorder.get());
    }

    private RunOutcome simulate(Setup setup, FlowObserver observer) {
        double most = fidelity.turns() * setup.discretisation().plan().batchS();
        return Simulator.simulate(setup.discretisation(), setup.probes(), new RunLimits(most), backend,
                new Onlookers(Progress.SILENT, observer));
    }

    private Finding read(Scenario scenario, RunOutcome.Averaged run, Evidence evidence,
                         Optional<FlowRecord> record) {
        double factor = fidelity.factor();
        FlowStatistics flow = factor == 1 ? run.statistics() : run.statistics().scaled(factor);
        List<ProbeSeries> series = factor == 1 ? run.series()
                : run.series().stream().map(one -> one.scaled(factor)).toList();
        Optional<Litter> litter = record.map(water -> Trials.onCorals(scenario, water,
                Assessor.speedDoubts(scenario, flow, series, evidence), new Tracker.Chance(fidelity.seed(), threads)));
        Assessment assessment = Assessor.assess(scenario, flow, series, run.quality(), evidence.with(litter));
        return Finding.of(assessment, BedAndRock.of(scenario, flow, assessment.stillWater()),
                run.quality().settled());
    }

    private Companion companion(Scenario scenario) {
        return fidelity.companion() ? Companion.of(scenario, fidelity.cellSizeM() * DoubtOptions.USUAL_RATIO,
                fidelity.seed(), coarse -> Retry.simulate(coarse, tried -> simulate(tried, FlowObserver.NONE)))
                : Companion.NONE;
    }

    /** A tank in which nothing moves the water. */
    private static Finding still(Scenario scenario) {
        List<CoralFinding> corals = scenario.corals().stream().map(coral -> {
            SpeedRange range = CoralNeeds.rangeFor(coral);
            return CoralFinding.still(coral.name(), range.lowMPerS(), range.highMPerS());
        }).toList();
        return new Finding(corals, 1, 0, scenario.tank().waterVolumeM3(), "all over the tank", 0, true);
    }
}
