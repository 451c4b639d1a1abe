package slackwater.viewer.session;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import slackwater.scenario.ScenarioFaults;

/** Saves layouts, takes up what an earlier window left, and asks before anything is lost. */
final class Keeping {
    private static final String LOOKING = "Looking whether this can be saved.";

    private final Session session;
    private Optional<Awaited> awaited = Optional.empty();

    /** What is being found out about a tank's layout. */
    private record Awaited(Side side, CompletableFuture<Outlook> outlook) {
    }

    Keeping(Session session) {
        this.session = session;
    }

    private Side side() {
        return session.side();
    }

    /** Offers the drafts of some tanks, one question after the other. */
    void offer(List<Side> some) {
        List<Side> left = some.stream().filter(side -> side.layout().draft().isPresent()).toList();
        if (left.isEmpty()) {
            return;
        }
        Side side = left.get(0);
        List<Side> others = left.subList(1, left.size());
        session.ask(new Question("A changed layout of " + side.name() + " was never saved, since the window"
                + " went away. Take it up again?", "Take it up", "Forget it",
                () -> {
                    side.layout().draft().ifPresent(layout -> side.layout().change("draft", layout));
                    offer(others);
                }, () -> {
                    side.layout().dropDraft();
                    offer(others);
                }));
    }

    /** Begins to look into the layout of the tank in hand; the question comes with {@link #attend}. */
    void askToSave() {
        if (side().editable() && !side().changed()) {
            session.say(side().layout().changedElsewhere() ? "Nothing to save: you changed nothing. "
                    + side().fileName() + " was changed by another program; open it again to see that."
                    : "Nothing to save: the layout is as in " + side().fileName() + ".");
        } else if (awaited.isEmpty()) {
            look(side());
        }
    }

    private void look(Side side) {
        awaited = Optional.of(new Awaited(side, side.layout().outlook()));
        session.say(LOOKING);
        attend();
    }

    /** Asks, or says why not, once it is known what saving would come to; never waits. */
    void attend() {
        if (session.question().isEmpty() && awaited.isPresent() && awaited.get().outlook().isDone()) {
            Awaited known = awaited.get();
            awaited = Optional.empty();
            if (session.message().equals(LOOKING)) {
                session.say("");
            }
            Outlook outlook = known.outlook().join();
            if (outlook instanceof Outlook.Ready ready) {
                ask(known.side(), ready);
            } else {
                session.say(((Outlook.Refused) outlook).why());
            }
        }
    }

    private void ask(Side side, Outlook.Ready ready) {
        if (!side.layout().holds(ready)) {
            look(side);
            return;
        }
        String name = ready.target().file().getFileName().toString();
        String words = !name.equals(side.fileName()) ? side.fileName() + " was changed by another"
                + " program since it was opened. Save your layout beside it as " + name + "?"
                : "Write the changed layout into " + name + "? Your comments and their order stay.";
        session.ask(new Question(words, "Save", "Not now", () -> save(side, ready), () -> { }));
    }

    private void save(Side side, Outlook.Ready ready) {
        try {
            if (side.layout().save(ready)) {
                session.say("Saved to " + ready.target().file().getFileName() + ".");
            } else {
                look(side);
            }
        } catch (ScenarioFaults refused) {
            session.say("Not saved: " + refused.faults().get(0) + ".");
        } catch (IOException unwritten) {
            session.say("Not saved: " + ready.target().file().getFileName() + " cannot be written ("
                    + unwritten.getMessage() + "). The file is as it was.");
        }
    }

    void askToClose() {
        List<String> unsaved = session.sides().stream().filter(Side::changed).map(Side::name).toList();
        if (unsaved.isEmpty()) {
            session.leave();
        } else {
            session.ask(new Question("Close without saving the changed layout of "
                    + String.join(" and ", unsaved) + "?", "Close without saving", "Stay", () -> {
                        session.sides().forEach(side -> side.layout().dropDraft());
                        session.leave();
                    }, () -> { }));
        }
    }
}
