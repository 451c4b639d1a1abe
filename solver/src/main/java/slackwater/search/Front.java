package slackwater.search;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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

    /** The cheapest offer that brings every coral into range, of equal prices the one that keeps more; may be none. */
    public static Optional<Offer> cheapestEnough(List<Offer> offers) {
        return offers.stream().filter(Offer::isEnough).min(Comparator.comparingDouble(Front::price)
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
