package slackwater.viewer.live;

import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import slackwater.detritus.Grain;
import slackwater.detritus.Release;
import slackwater.detritus.Release.From;
import slackwater.detritus.Sprinkle;
import slackwater.field.Passage;
import slackwater.field.Snapshot;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.simulation.LiveRun;

/** Grains in the water under way: asked for on any thread, moved on the water's, which knows the rest. */
final class Sower {
    /** Between two moments of the water, seconds: closer than the frames of a run, for the eye. */
    private static final double EVERY_S = 0.1;
    private static final int OVER_SURFACE = 1500;
    private static final int A_PINCH = 300;
    private static final int MOST = 6000;
    private static final double PINCH_RADIUS_M = 0.015;

    private final long seed;
    private final Queue<Order> orders = new ConcurrentLinkedQueue<>();
    private Optional<Sprinkle> grains = Optional.empty();
    private Optional<Passage> passage = Optional.empty();
    private Optional<Sown> last = Optional.empty();
    private double nextS;

    /**
     * @param kind what is to be followed from now on; empty for nothing
     * @param from where it is let go
     * @param afresh whether what was let go before is forgotten
     */
    private record Order(Optional<Grain> kind, From from, boolean afresh) {
    }

    Sower(long seed) {
        this.seed = seed;
    }

    /** Lets grains of a kind go all over the surface, and forgets those before. */
    void rain(Grain kind) {
        orders.add(new Order(Optional.of(kind), new From.Surface(), true));
    }

    /** Lets a pinch go at a place, metres; those of another kind are forgotten. */
    void pinch(Grain kind, Vec3 atM) {
        orders.add(new Order(Optional.of(kind), new From.Pinch(atM, PINCH_RADIUS_M), false));
    }

    /** Follows none any more. */
    void stop() {
        orders.add(new Order(Optional.empty(), new From.Surface(), true));
    }

    /** The water goes on under another layout, or with other steps. */
    void change(Scenario layout) {
        grains.ifPresent(known -> known.change(layout));
        passage = Optional.empty();
    }

    /**
     * Takes the grains along with the water, where it has gone on far enough.
     *
     * @throws slackwater.field.UnfitGrid where grains were to be let go and there is no water
     */
    Optional<Sown> follow(LiveRun water, Scenario layout) {
        for (Order order = orders.poll(); order != null; order = orders.poll()) {
            obey(order, layout);
        }
        if (grains.isPresent() && (passage.isEmpty() || water.waterS() >= nextS)) {
            water.moment().ifPresent(moment -> carry(water, moment));
        }
        return last;
    }

    private void carry(LiveRun water, Snapshot moment) {
        Passage seen = passage.orElseGet(() -> new Passage(water.discretisation().voxels().grid(),
                water.discretisation().voxels().fluid()));
        passage = Optional.of(seen);
        nextS = water.waterS() + EVERY_S;
        seen.see(moment);
        seen.record().ifPresent(record -> {
            grains.orElseThrow().follow(record);
            last = last.map(sown -> new Sown(sown.kind(), grains.orElseThrow().scene(record.grid().cellSizeM())));
        });
    }

    private void obey(Order order, Scenario layout) {
        if (order.kind().isEmpty()) {
            grains = Optional.empty();
            passage = Optional.empty();
            last = Optional.empty();
            return;
        }
        Grain kind = order.kind().get();
        boolean goesOn = !order.afresh() && last.map(sown -> sown.kind().equals(kind)).orElse(false);
        Sprinkle among = grains.filter(known -> goesOn).orElseGet(() -> new Sprinkle(layout, seed));
        int count = order.from() instanceof From.Surface ? OVER_SURFACE : A_PINCH;
        if (among.size() + count <= MOST) {
            among.letGo(new Release(kind, order.from(), count, 1));
        }
        grains = Optional.of(among);
        last = Optional.of(last.filter(sown -> goesOn).orElseGet(() -> new Sown(kind, among.scene(1))));
    }
}
