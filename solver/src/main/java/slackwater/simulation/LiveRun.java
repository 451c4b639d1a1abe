package slackwater.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.backend.Backend;
import slackwater.backend.FlowSolver;
import slackwater.backend.FlowState;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.TimePlan;
import slackwater.field.Probe;
import slackwater.field.ProbeSeries;
import slackwater.field.RunQuality;
import slackwater.field.Settling;
import slackwater.field.Snapshot;
import slackwater.field.Velocity;
import slackwater.simulation.RunOutcome.Averaged;
import slackwater.simulation.RunOutcome.Diverged;

/**
 * A flow that somebody watches and changes: it never ends, and a new layout goes on from the water as it is. After a
 * change, averages begin anew once the flow has found its way, by the same rules as in a {@link Simulator}. Not for use
 * by more than one thread at a time.
 */
public final class LiveRun implements AutoCloseable {
    private final Backend backend;
    private Discretisation discretisation;
    private FlowSolver solver;
    private Course course;
    /** When samples are taken; there may be looks between them. */
    private TimePlan plan;
    private int looks;
    private Averages averages;
    private List<ProbeRecord> probes = List.of();
    private List<Double> spinUp = new ArrayList<>();
    private List<Double> averaged = new ArrayList<>();
    private boolean averaging;
    private int samples;
    private double batchSum;
    private double sinceChangeS;
    private double waterS;
    private long steps;
    private long wallNs;
    private FlowState good;
    private Optional<Averaged> before = Optional.empty();
    private Optional<Snapshots> snapshots = Optional.empty();

    /** Begins with the water that the layout is given, or at rest. */
    public LiveRun(Discretisation discretisation, List<Probe> watched, Backend backend) {
        this.backend = backend;
        this.discretisation = discretisation;
        this.solver = backend.solver(discretisation.problem());
        Bridge.start(discretisation).ifPresent(solver::initialise);
        this.good = solver.state();
        begin(watched);
    }

    /**
     * Another layout on the same grid: goes on from the present state, or where that ran away, from the last good one.
     *
     * @param watched places to watch from now on
     */
    public void change(Discretisation next, List<Probe> watched) {
        boolean lost = course.last().diverged();
        FlowState present = lost ? good : solver.state();
        double longer = next.plan().timeStepS() / discretisation.plan().timeStepS();
        solver.close();
        solver = backend.solver(next.problem());
        good = longer == 1 ? present : present.scaled(longer);
        solver.resume(good);
        discretisation = next;
        snapshots = Optional.empty();
        begin(watched);
    }

    private void begin(List<Probe> watched) {
        course = new Course(discretisation, solver, discretisation.plan().stepsPerSample());
        plan = Course.plan(discretisation);
        looks = 0;
        spinUp = new ArrayList<>();
        averaged = new ArrayList<>();
        averaging = false;
        sinceChangeS = 0;
        before = Optional.empty();
        restart(watched);
    }

    private void restart(List<Probe> watched) {
        averages = new Averages(discretisation.voxels());
        probes = watched.stream().map(probe -> new ProbeRecord(probe, discretisation.voxels().grid(),
                plan.samplesPerBatch())).toList();
        samples = 0;
        batchSum = 0;
    }

    /** Goes on to the next look, some hundredths of a second of water; says where if the numbers ran away. */
    public Optional<Diverged> advance() {
        long start = System.nanoTime();
        boolean sound = course.sample();
        steps += discretisation.plan().stepsPerSample();
        if (!sound) {
            return course.diverged(waterS);
        }
        waterS += discretisation.plan().sampleS();
        sinceChangeS += discretisation.plan().sampleS();
        looks++;
        if (looks % looksPerSample() == 0) {
            count();
        }
        wallNs += System.nanoTime() - start;
        return Optional.empty();
    }

    private int looksPerSample() {
        return plan.stepsPerSample() / discretisation.plan().stepsPerSample();
    }

    private void count() {
        course.addTo(averages, probes);
        batchSum += course.last().meanSpeed();
        samples++;
        int perBatch = plan.samplesPerBatch();
        if (samples % perBatch != 0) {
            return;
        }
        averages.endBatch();
        (averaging ? averaged : spinUp).add(batchSum / perBatch);
        batchSum = 0;
        good = solver.state();
        if (!averaging) {
            before = Optional.of(outcome());
            averaging = Steadiness.spunUp(spinUp);
            restart(probes.stream().map(ProbeRecord::probe).toList());
        }
    }

    /** Velocity at this moment. */
    public Velocity velocity() {
        return Bridge.velocity(course.moments(), discretisation);
    }

    /**
     * All of this moment, with the shear on the walls at the last sample, for grains to go in. Takes longer than a
     * velocity alone, since the flow through the faces of the cells is balanced first.
     *
     * @return arrays that are used again for the next moment; empty before the first sample after a start or a change,
     *     when no shear is known
     */
    public Optional<Snapshot> moment() {
        if (looks < looksPerSample()) {
            return Optional.empty();
        }
        Snapshots made = snapshots.orElseGet(() -> new Snapshots(discretisation, solver.threads()));
        snapshots = Optional.of(made);
        return Optional.of(made.of(waterS, course.moments(), course.wallStress()));
    }

    /** How far the averages can be trusted. */
    public Settling settling() {
        double batches = (double) samples / plan.samplesPerBatch();
        double averagedS = samples * plan.sampleS();
        if (!averaging) {
            double done = spinUp.size() + batches;
            double needed = Math.max(Steadiness.LEAST_SPIN_UP, done) + Steadiness.LEAST_BATCHES;
            return new Settling(Settling.Stage.DEVELOPING, done / needed, sinceChangeS, averagedS);
        }
        double done = spinUp.size() + batches;
        double share = Math.min(1, done / (spinUp.size() + Steadiness.LEAST_BATCHES));
        return new Settling(settled() ? Settling.Stage.SETTLED : Settling.Stage.AVERAGING, share, sinceChangeS,
                averagedS);
    }

    /**
     * The averages: of the last batch or the one under way while the flow develops, then of all since. Empty for the
     * first moments after a start or a change.
     */
    public Optional<Averaged> averaged() {
        int perBatch = plan.samplesPerBatch();
        boolean few = averaged.isEmpty() && samples < perBatch / 2;
        return few && before.isPresent() || samples == 0 ? before : Optional.of(outcome());
    }

    private Averaged outcome() {
        RunQuality quality = quality();
        List<ProbeSeries> series = probes.stream().map(probe -> probe.series(plan.sampleS())).toList();
        var statistics = averages.statistics(discretisation.units());
        return quality.settled() ? new RunOutcome.Completed(statistics, series, quality, velocity())
                : new RunOutcome.NotSettled(statistics, series, quality, velocity());
    }

    private RunQuality quality() {
        double averagedS = samples * plan.sampleS();
        double wallS = wallNs * 1e-9;
        double rate = wallS == 0 ? 0 : steps * (double) discretisation.voxels().waterCells() / wallS;
        return new RunQuality(settled(), settled() ? "The readings have settled." : "The flow is still developing.",
                sinceChangeS - averagedS, averagedS, discretisation.plan().timeStepS(), steps, course.greatestMach(), 0,
                rate, wallS);
    }

    private boolean settled() {
        return averaging && averaged.size() >= Steadiness.LEAST_BATCHES && !Steadiness.trend(averaged);
    }

    /** Water time since the start, seconds. */
    public double waterS() {
        return waterS;
    }

    /** What is being computed. */
    public Discretisation discretisation() {
        return discretisation;
    }

    @Override
    public void close() {
        solver.close();
    }
}
