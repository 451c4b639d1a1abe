package slackwater.viewer.session;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.Soundness;
import slackwater.viewer.live.LiveFlow;

/**
 * Looks into changed layouts beside the window: one that can stand goes to the water and into the draft, of another it
 * is told why it cannot. Of several only the last one counts.
 */
final class Examination {
    private final Optional<LiveFlow> flow;
    private final Executor beside;
    private volatile Optional<Scenario> wanted = Optional.empty();
    private volatile Optional<String> fault = Optional.empty();
    private volatile int copy = 1;

    /** @param beside does one thing after the other */
    Examination(Optional<LiveFlow> flow, Executor beside) {
        this.flow = flow;
        this.beside = beside;
    }

    /** Says which of the layouts of one file this is, 1 and up: each has its own draft. */
    void number(int among) {
        copy = among;
    }

    /** Why the layout that was looked into last cannot stand, in a sentence; empty where it can. */
    Optional<String> fault() {
        return fault;
    }

    /**
     * Begins to look into a layout.
     *
     * @param changed whether it differs from the file, so that there is something to keep
     */
    void of(Scenario layout, boolean changed, Optional<ScenarioFile> file) {
        wanted = Optional.of(layout);
        beside.execute(() -> {
            if (wanted.filter(last -> last == layout).isPresent()) {
                examine(layout, changed, file);
            }
        });
    }

    private void examine(Scenario layout, boolean changed, Optional<ScenarioFile> file) {
        Optional<String> found = file.flatMap(known -> Soundness.fault(layout,
                known.file().toAbsolutePath().normalize().getParent()));
        fault = found;
        if (!changed) {
            file.ifPresent(this::dropDraft);
        } else if (found.isEmpty()) {
            // None that cannot stand: it could not be read again.
            file.ifPresent(known -> Draft.beside(known.file(), copy).keep(layout));
        }
        if (found.isEmpty()) {
            flow.ifPresent(water -> water.change(layout));
        }
    }

    /** Looks into something else beside the window, after what is under way. */
    CompletableFuture<Outlook> outlook(Supplier<Outlook> question) {
        return CompletableFuture.supplyAsync(question, beside);
    }

    /** Waits until the last layout has been looked into. */
    void settle() {
        CountDownLatch done = new CountDownLatch(1);
        beside.execute(done::countDown);
        try {
            done.await();
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    /** What an earlier window left unsaved; empty where there is none. */
    Optional<Scenario> draft(ScenarioFile file) {
        return Draft.beside(file.file(), copy).read();
    }

    private void dropDraft(ScenarioFile file) {
        Draft.beside(file.file(), copy).remove();
    }

    /** Forgets the draft, once what is under way is done. */
    void forget(ScenarioFile file) {
        beside.execute(() -> dropDraft(file));
    }
}
