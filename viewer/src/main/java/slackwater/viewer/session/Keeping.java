package slackwater.viewer.session;

import java.io.IOException;
import java.util.List;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioFile;

/** Saves layouts, takes up what an earlier window left, and asks before anything is lost. */
final class Keeping {
    private final Session session;

    Keeping(Session session) {
        this.session = session;
    }

    private Side side() {
        return session.side();
    }

    /** Offers the drafts of some tanks, one question after the other. */
    void offer(List<Side> some) {
        List<Side> left = some.stream().filter(side -> side.draft().isPresent()).toList();
        if (left.isEmpty()) {
            return;
        }
        Side side = left.get(0);
        List<Side> others = left.subList(1, left.size());
        session.ask(new Question("A changed layout of " + side.name() + " was never saved, since the window"
                + " went away. Take it up again?", "Take it up", "Forget it",
                () -> {
                    side.draft().ifPresent(layout -> side.change("draft", layout));
                    offer(others);
                }, () -> {
                    side.dropDraft();
                    offer(others);
                }));
    }

    void askToSave() {
        try {
            if (side().editable() && !side().changed()) {
                session.say(side().changedElsewhere() ? "Nothing to save: you changed nothing. " + side().fileName()
                        + " was changed by another program; open it again to see that."
                        : "Nothing to save: the layout is as in " + side().fileName() + ".");
                return;
            }
            ScenarioFile target = side().toSave();
            String name = target.file().getFileName().toString();
            String words = !name.equals(side().fileName()) ? side().fileName() + " was changed by another"
                    + " program since it was opened. Save your layout beside it as " + name + "?"
                    : "Write the changed layout into " + name + "? Your comments and their order stay.";
            session.ask(new Question(words, "Save", "Not now", () -> save(target), () -> { }));
        } catch (Side.Unsaved refused) {
            session.say(refused.getMessage());
        } catch (ScenarioFaults refused) {
            session.say("Not saved: " + refused.faults().get(0) + ".");
        }
    }

    private void save(ScenarioFile target) {
        try {
            if (side().save(target)) {
                session.say("Saved to " + target.file().getFileName() + ".");
            } else {
                askToSave();
            }
        } catch (Side.Unsaved | ScenarioFaults refused) {
            askToSave(); // it says why
        } catch (IOException unwritten) {
            session.say("Not saved: " + target.file().getFileName() + " cannot be written (" + unwritten.getMessage()
                    + "). The file is as it was.");
        }
    }

    void askToClose() {
        List<String> unsaved = session.sides().stream().filter(Side::changed).map(Side::name).toList();
        if (unsaved.isEmpty()) {
            session.leave();
        } else {
            session.ask(new Question("Close without saving the changed layout of "
                    + String.join(" and ", unsaved) + "?", "Close without saving", "Stay", () -> {
                        session.sides().forEach(Side::dropDraft);
                        session.leave();
                    }, () -> { }));
        }
    }
}
