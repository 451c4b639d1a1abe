package slackwater.viewer.session;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/**
 * Something that takes long to make: made elsewhere when what it is made from changes. Until then the last one stands,
 * so that a window need not wait. Asked for on one thread.
 *
 * @param <T> what is made; does not change any more
 */
final class Lasting<T> {
    private final Executor elsewhere;
    private Optional<Made<T>> last = Optional.empty();
    private Optional<Making<T>> under = Optional.empty();

    /** @param elsewhere where it is made; where that is here and now, there is never an old one */
    Lasting(Executor elsewhere) {
        this.elsewhere = elsewhere;
    }

    private record Made<T>(List<Object> from, T thing) {
    }

    /** One that is being made; it tells its end through a field that both threads see. */
    private static final class Making<T> implements Runnable {
        private final List<Object> from;
        private final Supplier<T> maker;
        private volatile Optional<T> made = Optional.empty();
        private volatile Optional<Throwable> broken = Optional.empty();

        Making(List<Object> from, Supplier<T> maker) {
            this.from = from;
            this.maker = maker;
        }

        @Override
        public void run() {
            try {
                made = Optional.of(maker.get());
            } catch (Throwable any) { // whatever it is, it is told of where the thing is asked for
                broken = Optional.of(any);
            }
        }
    }

    /**
     * The newest that there is; empty until there is a first one.
     *
     * @param from what it is made from; as long as that is equal, it is not made again
     * @throws IllegalStateException where making it failed
     */
    Optional<T> of(List<Object> from, Supplier<T> maker) {
        take();
        boolean known = last.map(made -> made.from().equals(from)).orElse(false);
        if (!known && under.isEmpty()) {
            Making<T> making = new Making<>(from, maker);
            under = Optional.of(making);
            elsewhere.execute(making);
            take();
        }
        return last.map(Made::thing);
    }

    /** The newest, made here and now if need be. */
    T now(List<Object> from, Supplier<T> maker) {
        boolean known = last.map(made -> made.from().equals(from)).orElse(false);
        if (!known) {
            under = Optional.empty();
            last = Optional.of(new Made<>(from, maker.get()));
        }
        return last.orElseThrow().thing();
    }

    private void take() {
        under.ifPresent(making -> {
            making.broken.ifPresent(any -> {
                under = Optional.empty();
                throw new IllegalStateException("a part of the picture could not be made", any);
            });
            making.made.ifPresent(thing -> {
                last = Optional.of(new Made<>(making.from, thing));
                under = Optional.empty();
            });
        });
    }
}
