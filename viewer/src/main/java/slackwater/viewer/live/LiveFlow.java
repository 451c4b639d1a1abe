package slackwater.viewer.live;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import java.util.function.DoubleSupplier;
import java.util.function.IntToDoubleFunction;
import slackwater.analysis.Assessor;
import slackwater.analysis.Probes;
import slackwater.backend.cpu.CpuBackend;
import slackwater.detritus.Grain;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.field.Probe;
import slackwater.field.Settling;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.simulation.LiveRun;
import slackwater.simulation.RunOutcome.Averaged;
import slackwater.simulation.RunOutcome.Diverged;

/**
 * Keeps the water of a layout going on a thread of its own. Whoever draws takes the latest snapshot and never waits;
 * whoever changes the layout hands it over and goes on. A layout that does not fit on the cells, or whose numbers run
 * away, is told of in the snapshot; the last good water stays in sight.
 */
public final class LiveFlow implements AutoCloseable {
    private static final long SEED = 1;
    private static final int MOST_HALVINGS = 3;
    private static final double MEAN_EVERY_S = 0.5;
    private static final double PACE_MEMORY_S = 2;
    /**
     * Measured with terrace-120 while a pump was moved over and over: 288 000 cells went on in 250 MB once and not in
     * 280 another time, 567 000 in 514 MB and not in 430. Populations are there up to four times while a layout
     * changes, means twice, and large arrays leave gaps. 190 more are for grains: the balanced flow of two moments, by
     * count of its arrays.
     */
    private static final long BYTES_PER_CELL = 1190;
    private static final long FIXED_BYTES = 64L << 20;
    private static final long IDLE_NS = 20_000_000;
    private static final double NS = 1e-9;

    private final DoubleSupplier choice;
    private final IntToDoubleFunction haste;
    private final CpuBackend backend;
    private final AtomicReference<Optional<Scenario>> wanted = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<Snapshot>> latest = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<String>> failure = new AtomicReference<>(Optional.empty());
    private final Sower sower = new Sower(SEED);
    private final Thread thread = new Thread(this::work, "water");
    private volatile boolean closing;
    private volatile Optional<String> trouble = Optional.empty();
    private volatile boolean paused;
    private volatile boolean resting;
    private volatile double cellSizeM;

    private Scenario scenario;
    private Optional<Voxels> voxels = Optional.empty();
    private List<Probe> probes = List.of();
    private Optional<LiveRun> run = Optional.empty();
    private Optional<Snapshot.Mean> mean = Optional.empty();
    private int halvings;
    /** The layout with its usual steps, where the water is still too fast for those. */
    private Optional<Discretisation> held = Optional.empty();
    private boolean stopped;
    private double pace;
    private long meanAtNs;

    /**
     * Starts with water at rest.
     *
     * @param cellSizeM gives the edge of a cell, metres; asked once, on the water's own thread, since a good choice
     *     takes a trial
     * @param threads for the solver
     */
    public LiveFlow(Scenario scenario, DoubleSupplier cellSizeM, int threads) {
        this(scenario, cellSizeM, threads, tries -> Math.pow(0.5, tries));
    }

    /** @param haste share of the usual step after numbers ran away so many times */
    LiveFlow(Scenario scenario, DoubleSupplier cellSizeM, int threads, IntToDoubleFunction haste) {
        this.choice = cellSizeM;
        this.haste = haste;
        this.backend = new CpuBackend(threads);
        this.scenario = scenario;
        wanted.set(Optional.of(scenario));
        thread.setDaemon(true);
        thread.start();
    }

    /** Memory for water on so many cells, with the pictures of it, bytes. */
    public static long bytes(long cells) {
        return FIXED_BYTES + BYTES_PER_CELL * cells;
    }

    /** Hands over another layout of the same tank; only the last one counts. */
    public void change(Scenario next) {
        wanted.set(Optional.of(next));
        LockSupport.unpark(thread);
    }

    /** Stops the clock of the water, or lets it go on. */
    public void pause(boolean still) {
        paused = still;
        LockSupport.unpark(thread);
    }

    public boolean paused() {
        return paused;
    }

    /** Whether the water rests by now; a step that was under way when it was stopped is still finished. */
    public boolean resting() {
        return resting;
    }

    /** Lets grains of a kind go all over the surface; those before are forgotten. The same kind goes the same way. */
    public void rain(Grain kind) {
        sower.rain(kind);
    }

    /** Lets a pinch of a kind go at a place in the water, metres, beside those of the same kind that are there. */
    public void pinch(Grain kind, Vec3 atM) {
        sower.pinch(kind, atM);
    }

    /** Takes all grains away. */
    public void clear() {
        sower.stop();
    }

    /** The water as it was last, empty until there is some; never waits. */
    public Optional<Snapshot> latest() {
        return latest.get();
    }

    /** A sentence on what ended the water for good, for want of memory or by a fault; empty as long as all is well. */
    public Optional<String> failure() {
        return failure.get();
    }

    /** A sentence where the layout does not fit or the numbers ran away; the latest water is then an earlier one. */
    public Optional<String> trouble() {
        return trouble;
    }

    /** Edge of a cell, metres; empty until it has been chosen. */
    public OptionalDouble cellSizeM() {
        return cellSizeM > 0 ? OptionalDouble.of(cellSizeM) : OptionalDouble.empty();
    }

    @Override
    public void close() {
        closing = true;
        LockSupport.unpark(thread);
        try {
            thread.join();
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    private void work() {
        try {
            cellSizeM = choice.getAsDouble();
            while (!closing) {
                wanted.getAndSet(Optional.empty()).ifPresent(this::take);
                boolean rest = run.isEmpty() || stopped || paused;
                resting = rest;
                if (rest) {
                    LockSupport.parkNanos(IDLE_NS);
                } else {
                    goOn(run.get());
                }
            }
        } catch (UnfitGrid none) {
            failure.set(Optional.of("No water is computed: " + none.getMessage() + "."));
        } catch (OutOfMemoryError full) {
            failure.set(Optional.of("The water stopped, since there is no more memory: take larger cells (--cell-cm),"
                    + " or give it more with the environment variable SLACKWATER_MEMORY (for example 8g)."));
        } catch (Throwable broken) { // whatever it is, it must be told of: nobody else watches this thread
            failure.set(Optional.of("The water stopped by a fault of ours (" + broken + ")."));
        } finally {
            run.ifPresent(LiveRun::close);
        }
    }

    /** Goes over to another layout; one that does not fit leaves the water as it was, and says so. */
    private void take(Scenario next) {
        try {
            boolean sameRock = next.rocks().equals(scenario.rocks()) && next.tank().equals(scenario.tank());
            Voxels cut = voxels.filter(kept -> sameRock)
                    .orElseGet(() -> Voxels.of(next.tank(), next.rocks(), cellSizeM));
            Discretisation usual = Discretiser.discretise(next, cut, SEED, haste.applyAsDouble(0));
            double share = latest.get().map(now -> Stride.share(usual, now.velocity())).orElse(1.0);
            Discretisation set = share < 1 ? Discretiser.discretise(next, cut, SEED, haste.applyAsDouble(0) * share)
                    : usual;
            List<Probe> watched = Probes.of(next, cut.grid(), cut.fluid());
            scenario = next;
            voxels = Optional.of(cut);
            probes = watched;
            halvings = 0;
            stopped = false;
            trouble = Optional.empty();
            mean = Optional.empty();
            held = share < 1 ? Optional.of(usual) : Optional.empty();
            start(set);
        } catch (UnfitGrid unfit) {
            trouble = Optional.of((run.isPresent() ? "The water goes on as before: " : "") + unfit.getMessage() + ".");
        }
    }

    private void start(Discretisation set) {
        if (run.isPresent()) {
            run.get().change(set, probes);
        } else {
            run = Optional.of(new LiveRun(set, probes, backend));
        }
        sower.change(scenario);
        publish(run.get());
    }

    private void goOn(LiveRun water) {
        long start = System.nanoTime();
        Optional<Diverged> end = water.advance();
        if (end.isPresent()) {
            ranAway(end.get());
            return;
        }
        double tookS = (System.nanoTime() - start) * NS;
        double now = water.discretisation().plan().sampleS() / tookS;
        double share = Math.min(1, tookS / PACE_MEMORY_S);
        pace = pace == 0 ? now : pace + share * (now - pace);
        publish(water);
        stretch(water.settling().stage());
    }

    /** Goes over to a layout's usual steps, once water that was faster before has slowed down. */
    private void stretch(Settling.Stage stage) {
        if (stage != Settling.Stage.DEVELOPING || halvings > 0) {
            held = Optional.empty(); // averages would begin anew
        }
        held.filter(usual -> Stride.share(usual, latest.get().orElseThrow().velocity()) == 1).ifPresent(usual -> {
            held = Optional.empty();
            start(usual);
        });
    }

    /** Tries again with half the step, from the last good water; after some times, stops there. */
    private void ranAway(Diverged end) {
        String where = String.format(Locale.ROOT, "The numbers ran away near x %.0f, y %.0f, z %.0f cm",
                end.atM().x() * 100, end.atM().y() * 100, end.atM().z() * 100);
        halvings++;
        if (halvings > MOST_HALVINGS) {
            stopped = true;
            trouble = Optional.of(where + ". Shown is the last good water. " + end.advice()
                    + " Your layout is kept.");
            return;
        }
        trouble = Optional.of(where + "; going on from the last good water with shorter steps.");
        start(Discretiser.discretise(scenario, voxels.orElseThrow(), SEED,
                haste.applyAsDouble(halvings)));
    }

    private void publish(LiveRun water) {
        if (mean.isEmpty() || (System.nanoTime() - meanAtNs) * NS > MEAN_EVERY_S) {
            mean = water.averaged().map(this::judged).or(() -> mean);
            meanAtNs = System.nanoTime();
        }
        latest.set(Optional.of(new Snapshot(scenario, water.velocity(), mean, water.settling(), water.waterS(), pace,
                grains(water))));
    }

    private Optional<Sown> grains(LiveRun water) {
        try {
            return sower.follow(water, scenario);
        } catch (UnfitGrid dry) {
            trouble = Optional.of("Nothing was let go there: " + dry.getMessage() + ".");
            return latest.get().flatMap(Snapshot::grains);
        }
    }

    private Snapshot.Mean judged(Averaged averaged) {
        return new Snapshot.Mean(averaged.statistics(), Assessor.assess(scenario, averaged.statistics(),
                averaged.series(), averaged.quality()));
    }
}
