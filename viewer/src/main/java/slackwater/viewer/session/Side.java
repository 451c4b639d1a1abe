package slackwater.viewer.session;

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
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.live.LiveFlow;
import slackwater.viewer.live.Snapshot;
import slackwater.viewer.scene.Crumbs;
import slackwater.viewer.scene.Water;

/**
 * One tank at the window: a scenario file whose water goes on while it is changed, or a finished result, which stays as
 * it is.
 */
public final class Side implements AutoCloseable {
    private final String name;
    private final Optional<LiveFlow> flow;
    private final Optional<Finished> finished;
    private final Examination examination;
    private final Manuscript layout;
    private Optional<Water> water = Optional.empty();
    private Optional<Double> drawnFastMPerS = Optional.empty();
    private final Strewn strewn = new Strewn();
    private final Map<String, Double> outputs = new HashMap<>();

    private Side(String name, Scenario scenario, Optional<ScenarioFile> file, Optional<LiveFlow> flow,
                 Optional<Finished> finished, Executor beside) {
        this.examination = new Examination(flow, beside);
        this.layout = new Manuscript(scenario, file, examination);
        this.name = name;
        this.flow = flow;
        this.finished = finished;
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
        return layout.file().map(known -> String.valueOf(known.file().getFileName())).orElse(name);
    }

    /** Whether both are layouts of one file. */
    boolean sharesFile(Side other) {
        return layout.file().isPresent() && layout.file().map(Side::place).equals(other.layout.file().map(Side::place));
    }

    private static Path place(ScenarioFile file) {
        return file.file().toAbsolutePath().normalize();
    }

    /** Says which of the layouts of one file this is, 1 and up: each has its own draft. */
    void number(int among) {
        examination.number(among);
    }

    /** The layout that is worked on. */
    Manuscript layout() {
        return layout;
    }

    /** The output that a pump had before it was switched off, 0 to 1; all of it where that is not known. */
    double outputBefore(String pump) {
        return outputs.getOrDefault(pump, 1.0);
    }

    void rememberOutput(String pump, double fraction) {
        outputs.put(pump, fraction);
    }

    public boolean editable() {
        return layout.file().isPresent();
    }

    /** The layout as it is shown: while something is dragged, as it would be. */
    public Scenario scenario() {
        return layout.shown();
    }

    /** Whether the layout differs from the file. */
    public boolean changed() {
        return layout.changed();
    }

    public boolean canUndo() {
        return layout.canUndo();
    }

    public boolean canRedo() {
        return layout.canRedo();
    }

    /** Why the present layout is not computed or cannot be trusted, in a sentence. */
    public Optional<String> trouble() {
        return examination.fault().map(says -> "The water goes on as before, since this cannot stand so: " + says + ".")
                .or(() -> flow.flatMap(LiveFlow::failure).map(says -> says
                        + " Your layout is kept and can be saved."))
                .or(() -> flow.flatMap(LiveFlow::trouble));
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

    /** Notes from which speed water counts as fast in the picture of this tank; empty where it shows none. */
    void drew(Optional<Double> fastMPerS) {
        drawnFastMPerS = fastMPerS;
    }

    /** From which speed water counts as fast in the picture as it is drawn, metres per second. */
    public Optional<Double> drawnFastMPerS() {
        return drawnFastMPerS;
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
