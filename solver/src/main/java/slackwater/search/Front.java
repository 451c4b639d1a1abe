package slackwater.search;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which offers are worth looking at: those that no other beats in price and corals alike. */
public final class Front {
    private Front() {
    }

    /** Offers that no other one beats, the cheapest first. Offers without a price are left out. */
    public static List<Offer> of(List<Offer> offers) {
        List<Offer> priced = offers.stream().filter(offer -> offer.set().price().isPresent()).toList();
        return priced.stream().filter(offer -> priced.stream().noneMatch(other -> beats(other, offer)))
                .sorted(Comparator.comparingDouble(Front::price)).toList();
    }

    /**
     * The cheapest offer with every coral in range as computed, of equal prices the one that keeps more; may be none.
     * How many of them are in range for certain it does not ask.
     */
    public static Optional<Offer> cheapestInRange(List<Offer> offers) {
        return cheapest(offers.stream().filter(Offer::isInRange));
    }

    /** The cheapest offer whose corals all pass for certain; may be none. */
    public static Optional<Offer> cheapestCertain(List<Offer> offers) {
        return cheapest(offers.stream().filter(Offer::isCertain));
    }

    private static Optional<Offer> cheapest(Stream<Offer> offers) {
        return offers.min(Comparator.comparingDouble(Front::price)
                .thenComparing(Comparator.comparingInt(Offer::kept).reversed()));
    }

    private static boolean beats(Offer one, Offer other) {
        boolean noWorse = price(one) <= price(other) && one.inRange() >= other.inRange();
        return noWorse && (price(one) < price(other) || one.inRange() > other.inRange());
    }

    private static double price(Offer offer) {
        return offer.set().price().orElse(Double.POSITIVE_INFINITY);
    }
}
