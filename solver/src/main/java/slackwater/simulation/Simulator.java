package slackwater.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.backend.Backend;
import slackwater.backend.FlowSolver;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.TimePlan;
import slackwater.field.FlowObserver;
import slackwater.field.Probe;
import slackwater.field.ProbeSeries;
import slackwater.field.RunQuality;
import slackwater.field.Velocity;

/**
 * Lets the water run until it has settled, then averages until the readings are known well enough.
 *
 * <p>Time goes in batches of about one turn of the tank's water. Spin-up ends when the tank's mean speed has stopped
 * changing from batch to batch, or after one batch if the run began with a flow and not at rest; averaging ends when a
 * longer run would hardly narrow a range (batch means, 95 % by Student's t), at the earliest after
 * {@value #LEAST_BATCHES} batches and at the latest after {@value #MOST_BATCHES}.
 */
public final class Simulator {
    private static final int MOST_SPIN_UP = Steadiness.MOST_SPIN_UP;
    private static final int LEAST_BATCHES = Steadiness.LEAST_BATCHES;
    private static final int MOST_BATCHES = 16;

    private final Discretisation discretisation;
    private final TimePlan plan;
    private final RunLimits limits;
    private final Onlookers onlookers;
    private final Optional<Snapshots> snapshots;
    private final FlowSolver solver;
    private final Course course;
    private final List<ProbeRecord> probes = new ArrayList<>();
    private final Averages averages;
    private final List<Double> spinUp = new ArrayList<>();
    private final List<Double> averaged = new ArrayList<>();
    private final long startNs = System.nanoTime();

    private Simulator(Discretisation discretisation, List<Probe> watched, RunLimits limits, FlowSolver solver,
                      Onlookers onlookers) {
        this.discretisation = discretisation;
        this.plan = Course.plan(discretisation);
        this.limits = limits;
        this.onlookers = onlookers;
        this.snapshots = onlookers.observer() == FlowObserver.NONE ? Optional.empty()
                : Optional.of(new Snapshots(discretisation, solver.threads()));
        this.solver = solver;
        Bridge.start(discretisation).ifPresent(solver::initialise);
        this.course = new Course(discretisation, solver, plan.stepsPerSample());
        this.averages = new Averages(discretisation.voxels());
        watched.forEach(probe -> probes.add(
                new ProbeRecord(probe, discretisation.voxels().grid(), plan.samplesPerBatch())));
    }

    /** Runs the water and returns what came of it. */
    public static RunOutcome simulate(Discretisation discretisation, List<Probe> probes, RunLimits limits,
                                      Backend backend, Progress progress) {
        return simulate(discretisation, probes, limits, backend, Onlookers.of(progress));
    }

    /** The same before onlookers. */
    public static RunOutcome simulate(Discretisation discretisation, List<Probe> probes, RunLimits limits,
                                      Backend backend, Onlookers onlookers) {
        try (FlowSolver solver = backend.solver(discretisation.problem())) {
            return new Simulator(discretisation, probes, limits, solver, onlookers).run();
        }
    }

    /** Bytes that a run on this many cells needs beside the populations. */
    public static long bytes(long cells) {
        return Averages.bytes(cells) + (5 * Float.BYTES + Snapshots.BYTES_PER_CELL) * cells;
    }

    /**
     * Steps of the shortest and of the longest run that a plan allows.
     *
     * @param fromRest whether it begins with water at rest, or else with a flow
     */
    public static long[] stepRange(TimePlan plan, boolean fromRest) {
        long batch = (long) plan.stepsPerSample() * plan.samplesPerBatch();
        int least = fromRest ? Steadiness.LEAST_SPIN_UP : Steadiness.SPIN_UP_OF_A_FLOW;
        int most = fromRest ? MOST_SPIN_UP : Steadiness.SPIN_UP_OF_A_FLOW;
        return new long[] {(least + LEAST_BATCHES) * batch, (most + MOST_BATCHES) * batch};
    }

    private RunOutcome run() {
        while (spinUp.isEmpty() || !spunUp() && mayGoOn()) {
            if (!batch(false)) {
                return diverged();
            }
        }
        double massAtStart = course.last().massDeviation();
        while (!settled() && averaged.size() < MOST_BATCHES && (mayGoOn() || averaged.size() < 2)) {
            if (!batch(true)) {
                return diverged();
            }
        }
        return outcome(massAtStart);
    }

    /** Runs one batch; false if the numbers ran away. */
    private boolean batch(boolean averaging) {
        double sum = 0;
        for (int sample = 0; sample < plan.samplesPerBatch(); sample++) {
            if (!course.sample()) {
                return false;
            }
            sum += course.last().meanSpeed();
            if (averaging) {
                course.addTo(averages, probes);
                show(averaged.size() * plan.batchS() + (sample + 1) * plan.sampleS());
            }
            report(sample + 1);
        }
        (averaging ? averaged : spinUp).add(sum / plan.samplesPerBatch());
        if (averaging) {
            averages.endBatch();
        }
        return true;
    }

    private void show(double timeS) {
        if (onlookers.observer().wants(timeS)) {
            snapshots.ifPresent(water -> onlookers.observer().see(
                    water.of(timeS, course.moments(), course.wallStress())));
        }
    }

    private void report(int samples) {
        double batches = spinUp.size() + averaged.size() + (double) samples / plan.samplesPerBatch();
        double ahead = (spunUp() || !fromRest() ? Math.max(Steadiness.SPIN_UP_OF_A_FLOW, spinUp.size())
                : MOST_SPIN_UP) + MOST_BATCHES;
        double share = Math.min(1, batches / Math.min(ahead, Math.max(batches, limits.mostWaterS() / plan.batchS())));
        onlookers.progress().at(share, solver.step() * plan.timeStepS(), wallS() * (1 - share) / share);
    }

    private boolean mayGoOn() {
        return (spinUp.size() + averaged.size() + 1) * plan.batchS() <= limits.mostWaterS();
    }

    private boolean spunUp() {
        return fromRest() ? Steadiness.spunUp(spinUp) : spinUp.size() >= Steadiness.SPIN_UP_OF_A_FLOW;
    }

    private boolean fromRest() {
        return discretisation.start().isEmpty();
    }

    private boolean settled() {
        return averaged.size() >= LEAST_BATCHES && !Steadiness.trend(averaged)
                && probes.stream().allMatch(ProbeRecord::settled);
    }

    private RunOutcome outcome(double massAtStart) {
        boolean settled = settled();
        double averagedS = averaged.size() * plan.batchS();
        double waterCells = discretisation.voxels().waterCells();
        double drift = (course.last().massDeviation() - massAtStart) / waterCells / (averagedS / 60);
        double rate = solver.step() * waterCells / wallS();
        RunQuality quality = new RunQuality(settled, remark(settled), spinUp.size() * plan.batchS(), averagedS,
                plan.timeStepS(), solver.step(), course.greatestMach(), drift, rate, wallS());
        List<ProbeSeries> series = probes.stream().map(probe -> probe.series(plan.sampleS())).toList();
        var statistics = averages.statistics(discretisation.units());
        Velocity ending = Bridge.velocity(course.moments(), discretisation);
        return settled ? new RunOutcome.Completed(statistics, series, quality, ending)
                : new RunOutcome.NotSettled(statistics, series, quality, ending);
    }

    private String remark(boolean settled) {
        String notes = (fromRest() ? "" : " It began with the water that the larger cells had come to.")
                + (plan.wholePeriods() ? ""
                : " The pumps' periods share no short common multiple: averages are over the longest one.");
        if (settled) {
            return "The readings have settled." + notes;
        }
        if (averaged.size() < LEAST_BATCHES) {
            return "The time limit left too little water time to average over; allow more." + notes;
        }
        if (Steadiness.trend(averaged)) {
            return "The tank's mean speed was still changing." + notes;
        }
        List<String> open = probes.stream().filter(probe -> !probe.settled()).map(ProbeRecord::name).toList();
        return "Still too uncertain to judge: " + String.join(", ", open) + "." + notes;
    }

    private RunOutcome diverged() {
        return course.diverged(solver.step() * plan.timeStepS()).orElseThrow();
    }

    private double wallS() {
        return (System.nanoTime() - startNs) * 1e-9;
    }
}
