package slackwater.viewer.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.DoubleSupplier;
import slackwater.analysis.Assessment;
import slackwater.analysis.CoralReading;
import slackwater.field.FlowStatistics;
import slackwater.field.Settling.Stage;
import slackwater.field.Velocity;
import slackwater.scenario.Coral;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.History;
import slackwater.viewer.edit.Soundness;
import slackwater.viewer.live.LiveFlow;
import slackwater.viewer.live.Snapshot;
import slackwater.viewer.scene.Crumbs;
import slackwater.viewer.scene.Water;

/**
 * One tank at the window: a scenario file whose water goes on while it is changed, or a finished result, which stays as
 * it is.
 */
public final class Side implements AutoCloseable {
    /** Changes of one kind that follow each other within this time are undone together. */
    private static final long TOGETHER_NS = 900_000_000;
    /** Cells of this size are what {@code check} tries a scenario on. */
    private static final double CHECKED_CELL_M = 0.01;

    private final String name;
    private Optional<ScenarioFile> file;
    private final Optional<LiveFlow> flow;
    private final Optional<Finished> finished;
    private History<Scenario> history;
    private Optional<Scenario> preview = Optional.empty();
    private final Examination examination;
    private Scenario saved;
    private String lastKind = "";
    private long lastNs;
    private Optional<Water> water = Optional.empty();
    private final Strewn strewn = new Strewn();
    private final Map<String, Double> outputs = new HashMap<>();

    private Side(String name, Scenario scenario, Optional<ScenarioFile> file, Optional<LiveFlow> flow,
                 Optional<Finished> finished, Executor beside) {
        this.examination = new Examination(flow, beside);
        this.name = name;
        this.file = file;
        this.flow = flow;
        this.finished = finished;
        this.history = History.of(scenario);
        this.saved = scenario;
    }

    /**
     * A scenario file with water that starts at rest.
     *
     * @param cellSizeM gives the edge of a cell, metres; asked on the water's own thread
     */
    public static Side live(ScenarioFile file, DoubleSupplier cellSizeM, int threads) {
        return live(file, cellSizeM, threads, Runnable::run);
    }

    /** @param beside where changed layouts are looked into, one after the other: with a scan that takes a while */
    public static Side live(ScenarioFile file, DoubleSupplier cellSizeM, int threads, Executor beside) {
        return new Side(String.valueOf(file.file().getFileName()), file.scenario(), Optional.of(file),
                Optional.of(new LiveFlow(file.scenario(), cellSizeM, threads)), Optional.empty(), beside);
    }

    /** A finished result. */
    public static Side finished(String name, Scenario scenario, Finished found) {
        return new Side(name, scenario, Optional.empty(), Optional.empty(), Optional.of(found), Runnable::run);
    }

    /** The file's name, or the result's. */
    public String name() {
        return name;
    }

    /** The name of the file that was opened, or saved to last. */
    String fileName() {
        return file.map(known -> String.valueOf(known.file().getFileName())).orElse(name);
    }

    /** Whether both are layouts of one file. */
    boolean sharesFile(Side other) {
        return file.isPresent() && other.file.isPresent() && place(file.get()).equals(place(other.file.get()));
    }

    private static Path place(ScenarioFile file) {
        return file.file().toAbsolutePath().normalize();
    }

    /** Says which of the layouts of one file this is, 1 and up: each has its own draft. */
    void number(int among) {
        examination.number(among);
    }

    /** Whether another program changed the file since it was opened. */
    boolean changedElsewhere() {
        return file.map(known -> known.changedOnDisk() && Files.exists(known.file())).orElse(false);
    }

    /** The output that a pump had before it was switched off, 0 to 1; all of it where that is not known. */
    double outputBefore(String pump) {
        return outputs.getOrDefault(pump, 1.0);
    }

    void rememberOutput(String pump, double fraction) {
        outputs.put(pump, fraction);
    }

    public boolean editable() {
        return file.isPresent();
    }

    /** The layout as it is shown: while something is dragged, as it would be. */
    public Scenario scenario() {
        return preview.orElse(history.now());
    }

    /** Whether the layout differs from the file. */
    public boolean changed() {
        return !history.now().equals(saved);
    }

    public boolean canUndo() {
        return history.canUndo();
    }

    public boolean canRedo() {
        return history.canRedo();
    }

    /** Shows a layout that is not decided on yet. */
    void preview(Scenario scenario) {
        preview = Optional.of(scenario);
    }

    void dropPreview() {
        preview = Optional.empty();
    }

    /** Decides on a layout; quick changes of one kind, such as a key held down, are undone together. */
    void change(String kind, Scenario scenario) {
        boolean goesOn = kind.equals(lastKind) && System.nanoTime() - lastNs < TOGETHER_NS && history.canUndo()
                && !history.canRedo();
        preview = Optional.empty();
        if (scenario.equals(history.now())) {
            return;
        }
        history = goesOn ? history.undone().with(scenario) : history.with(scenario);
        lastKind = kind;
        lastNs = System.nanoTime();
        compute();
    }

    void undo() {
        lastKind = "";
        history = history.undone();
        compute();
    }

    void redo() {
        lastKind = "";
        history = history.redone();
        compute();
    }

    /** A layout of this file that an earlier window left unsaved; empty where there is none. */
    Optional<Scenario> draft() {
        return file.flatMap(examination::draft)
                .filter(left -> left.tank().equals(saved.tank()) && !left.equals(saved));
    }

    /** Forgets what was not saved. */
    void dropDraft() {
        examination.settle();
        file.ifPresent(examination::dropDraft);
    }

    private void compute() {
        examination.of(history.now(), changed(), file);
    }

    /** Why the present layout is not computed or cannot be trusted, in a sentence. */
    public Optional<String> trouble() {
        return examination.fault().map(says -> "The water goes on as before, since this cannot stand so: " + says + ".")
                .or(() -> flow.flatMap(LiveFlow::failure).map(says -> says
                        + " Your layout is kept and can be saved."))
                .or(() -> flow.flatMap(LiveFlow::trouble));
    }

    /**
     * Where the layout would be saved: the file itself, or a new one beside it where somebody else has changed it.
     *
     * @throws ScenarioFaults where it cannot be saved, with the reason
     */
    ScenarioFile toSave() throws ScenarioFaults, Unsaved {
        ScenarioFile known = file.orElseThrow(() -> new Unsaved("A finished result stays as it is; open its scenario"
                + " to change the layout."));
        examination.settle();
        Optional<String> amiss = examination.fault().or(() -> Soundness.unfit(history.now(), CHECKED_CELL_M));
        if (amiss.isPresent()) {
            throw new Unsaved("Not saved, since this cannot stand so: " + amiss.get() + ".");
        }
        ScenarioFile changed = known.with(history.now());
        return changedElsewhere() ? new ScenarioFile(free(known.file()), changed.text(), changed.marked(),
                changed.scenario()) : changed;
    }

    private static Path free(Path file) {
        String base = file.getFileName().toString().replaceFirst("\\.toml$", "");
        Path free = file;
        for (int n = 2; Files.exists(free); n++) {
            free = file.resolveSibling(base + "-" + n + ".toml");
        }
        return free;
    }

    /**
     * Writes what {@link #toSave} gave, as long as that would still be the same: between question and answer somebody
     * else may have written the file. Tells whether it was; nothing is written otherwise.
     */
    boolean save(ScenarioFile target) throws IOException, ScenarioFaults, Unsaved {
        ScenarioFile now = toSave();
        if (!now.file().equals(target.file()) || !now.text().equals(target.text())) {
            return false;
        }
        target.write();
        dropDraft();
        file = Optional.of(target);
        saved = history.now();
        return true;
    }

    /** Says why something was not saved. */
    static final class Unsaved extends Exception {
        private static final long serialVersionUID = 1;

        Unsaved(String message) {
            super(message);
        }
    }

    /** The water as it was last; empty for a finished result. */
    public Optional<Snapshot> snapshot() {
        return flow.flatMap(LiveFlow::latest);
    }

    public Optional<LiveFlow> flow() {
        return flow;
    }

    /** Velocity for what drifts: of this moment, or the mean of a finished result. */
    public Optional<Velocity> velocity() {
        return snapshot().map(Snapshot::velocity).or(() -> finished.map(found -> found.water().flow())
                .map(mean -> new Velocity(mean.grid(), mean.fluid(), mean.meanU(), mean.meanV(), mean.meanW())));
    }

    /** Averages; empty until there are some. */
    public Optional<FlowStatistics> mean() {
        return snapshot().flatMap(Snapshot::mean).map(Snapshot.Mean::flow)
                .or(() -> finished.map(found -> found.water().flow()));
    }

    private Optional<Assessment> assessment() {
        return snapshot().flatMap(Snapshot::mean).map(Snapshot.Mean::assessment);
    }

    /** Whether the numbers belong to the layout shown and have settled. */
    public boolean settled() {
        return finished.map(found -> found.water().settled()).orElseGet(() -> snapshot()
                .map(now -> now.settling().settled() && now.scenario().equals(scenario())).orElse(false));
    }

    /**
     * Whether still water can be told: while a flow develops, water that has not been reached yet would pass for it.
     */
    public boolean knowsStillWater() {
        return finished.isPresent() || snapshot().map(now -> now.settling().stage() != Stage.DEVELOPING).orElse(false);
    }

    /** The averaged water for a picture: the same object as long as it is the same. */
    public Optional<Water> water() {
        Optional<FlowStatistics> mean = mean();
        if (finished.isPresent()) {
            return finished.map(Finished::water);
        }
        if (mean.isEmpty() || assessment().isEmpty()) {
            water = Optional.empty();
        } else if (water.isEmpty() || water.get().flow() != mean.get() || water.get().settled() != settled()) {
            water = Optional.of(new Water(mean.get(), assessment().get().stillWater().probability(), settled()));
        }
        return water;
    }

    /** The grains that were let go in this water, of one kind; empty where there are none. */
    public Optional<Crumbs> crumbs(String kind) {
        return snapshot().flatMap(strewn::of).or(() -> finished.flatMap(found -> found.water().crumbs().stream()
                .filter(crumbs -> crumbs.what().equals(kind)).findFirst()));
    }

    /** One reading a coral, as long as the corals shown are those that the water was judged for; else none. */
    public List<CoralReading> readings() {
        List<CoralReading> readings = finished.map(Finished::corals)
                .orElseGet(() -> assessment().map(Assessment::corals).orElse(List.of()));
        List<Coral> judged = readings.stream().map(CoralReading::coral).toList();
        return judged.equals(scenario().corals()) ? readings : List.of();
    }

    @Override
    public void close() {
        flow.ifPresent(LiveFlow::close);
    }
}
