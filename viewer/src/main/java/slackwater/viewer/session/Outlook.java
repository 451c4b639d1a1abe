package slackwater.viewer.session;

import java.nio.file.Path;
import java.util.Optional;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.edit.Soundness;

/** What saving a layout would come to. */
sealed interface Outlook {
    /** Cells of this size are what {@code check} tries a scenario on. */
    double CHECKED_CELL_M = 0.01;

    /**
     * It can be written.
     *
     * @param target the file with its new text
     * @param layout what was looked into
     */
    record Ready(ScenarioFile target, Scenario layout) implements Outlook {
    }

    /** It cannot; why, in a sentence. */
    record Refused(String why) implements Outlook {
    }

    /** Looks into it, for as long as that takes. */
    static Outlook of(ScenarioFile known, Scenario layout, Path place) {
        Path folder = known.file().toAbsolutePath().normalize().getParent();
        Optional<String> amiss = Soundness.fault(layout, folder).or(() -> Soundness.unfit(layout, CHECKED_CELL_M));
        if (amiss.isPresent()) {
            return new Refused("Not saved, since this cannot stand so: " + amiss.get() + ".");
        }
        try {
            ScenarioFile changed = known.with(layout);
            return new Ready(new ScenarioFile(place, changed.text(), changed.marked(), changed.scenario()), layout);
        } catch (ScenarioFaults refused) {
            return new Refused("Not saved: " + refused.faults().get(0) + ".");
        }
    }
}
