package slackwater.viewer.session;

import java.util.Optional;
import slackwater.scenario.Scenario;
import slackwater.viewer.live.Snapshot;
import slackwater.viewer.live.Sown;
import slackwater.viewer.scene.Crumbs;
import slackwater.viewer.scene.Seats;

/** The grains in the water of one tank as a picture shows them; the same object as long as none moves. */
final class Strewn {
    private Optional<Known> known = Optional.empty();

    /** What was found last, and from what. */
    private record Known(Scenario layout, Seats seats, Sown sown, Crumbs crumbs) {
    }

    /** Those of a moment; empty where nothing was let go. */
    Optional<Crumbs> of(Snapshot now) {
        if (now.grains().isEmpty()) {
            known = Optional.empty();
            return Optional.empty();
        }
        Sown sown = now.grains().get();
        boolean same = known.filter(last -> last.sown() == sown && last.layout() == now.scenario()).isPresent();
        if (!same) {
            Seats seats = known.filter(last -> last.layout() == now.scenario()).map(Known::seats)
                    .orElseGet(() -> new Seats(now.scenario(), now.velocity().grid().cellSizeM()));
            known = Optional.of(new Known(now.scenario(), seats, sown, Crumbs.of(sown.kind().name(), sown.scene(), -1,
                    seats)));
        }
        return known.map(Known::crumbs);
    }
}
