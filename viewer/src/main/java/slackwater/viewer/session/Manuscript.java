package slackwater.viewer.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.History;

/** A layout that is worked on: what it was, what it is, what is only tried, and the file that it is kept in. */
final class Manuscript {
    /** Changes of one kind that follow each other within this time are undone together. */
    private static final long TOGETHER_NS = 900_000_000;

    private final Examination examination;
    private Optional<ScenarioFile> file;
    private History<Scenario> history;
    private Optional<Scenario> preview = Optional.empty();
    private Scenario saved;
    private String lastKind = "";
    private long lastNs;

    /** @param file empty for a layout that stays as it is */
    Manuscript(Scenario scenario, Optional<ScenarioFile> file, Examination examination) {
        this.file = file;
        this.history = History.of(scenario);
        this.saved = scenario;
        this.examination = examination;
    }

    Optional<ScenarioFile> file() {
        return file;
    }

    /** The layout as it is shown: while something is dragged, as it would be. */
    Scenario shown() {
        return preview.orElse(history.now());
    }

    /** Whether the layout differs from the file. */
    boolean changed() {
        return !history.now().equals(saved);
    }

    boolean canUndo() {
        return history.canUndo();
    }

    boolean canRedo() {
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
        examine();
    }

    void undo() {
        lastKind = "";
        history = history.undone();
        examine();
    }

    void redo() {
        lastKind = "";
        history = history.redone();
        examine();
    }

    private void examine() {
        examination.of(history.now(), changed(), file);
    }

    /** A layout of this file that an earlier window left unsaved; empty where there is none. */
    Optional<Scenario> draft() {
        return file.flatMap(examination::draft)
                .filter(left -> left.tank().equals(saved.tank()) && !left.equals(saved));
    }

    /** Forgets what was not saved, for good when this returns. */
    void dropDraft() {
        file.ifPresent(examination::forget);
        examination.settle();
    }

    /** Whether another program changed the file since it was opened. */
    boolean changedElsewhere() {
        return file.map(Manuscript::changedElsewhere).orElse(false);
    }

    private static boolean changedElsewhere(ScenarioFile known) {
        return known.changedOnDisk() && Files.exists(known.file());
    }

    /** Looks beside the window into what saving would come to: a scan takes a while. */
    CompletableFuture<Outlook> outlook() {
        Scenario layout = history.now();
        return file.map(known -> examination.outlook(() -> Outlook.of(known, layout, place(known))))
                .orElseGet(() -> CompletableFuture.completedFuture(new Outlook.Refused("A finished result stays as it"
                        + " is; open its scenario to change the layout.")));
    }

    /** Where the layout would be written: the file itself, or beside it where somebody else has changed that. */
    private static Path place(ScenarioFile known) {
        String base = known.file().getFileName().toString().replaceFirst("\\.toml$", "");
        Path free = known.file();
        for (int n = 2; changedElsewhere(known) && Files.exists(free); n++) {
            free = known.file().resolveSibling(base + "-" + n + ".toml");
        }
        return free;
    }

    /** Whether it would still come to the same: meanwhile the layout, or somebody else the file, may have changed. */
    boolean holds(Outlook.Ready ready) {
        return ready.layout().equals(history.now())
                && file.map(known -> place(known).equals(ready.target().file())).orElse(false);
    }

    /** Writes what was found ready, as long as that {@link #holds}. Tells whether it was; else nothing is written. */
    boolean save(Outlook.Ready ready) throws IOException, ScenarioFaults {
        if (!holds(ready)) {
            return false;
        }
        ready.target().write();
        file.ifPresent(examination::forget);
        file = Optional.of(ready.target());
        saved = history.now();
        return true;
    }
}
