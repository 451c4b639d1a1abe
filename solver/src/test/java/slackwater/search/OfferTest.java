package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.pump.catalogue.PumpModel;
import slackwater.scenario.Outlet;

/** Which pumps to buy, from what each set came to. */
class OfferTest {
    private static final List<PumpModel> MODELS = List.of(model("a", 50), model("b", 120), model("c", 200));

    private static PumpModel model(String name, double price) {
        return new PumpModel(name, "invented", 1e-3, 0.8, 0.2, new Outlet.Round(0.05), 1, OptionalDouble.of(10),
                OptionalDouble.of(price), 0.3, 1, 0.05, 2, new Vec3(0.05, 0.05, 0.05));
    }

    private static Offer offer(PumpSet set, int inRange) {
        return offer(set, inRange, 0);
    }

    private static Offer offer(PumpSet set, int inRange, int sure) {
        List<CoralFinding> corals = new ArrayList<>();
        for (int n = 0; n < 4; n++) {
            corals.add(new CoralFinding("c" + n, n < inRange ? 0.1 : 0.01, 0, 1, 0.05, 0.5,
                    n < sure ? Verdict.PASS : Verdict.MARGINAL));
        }
        Trial trial = new Trial(set.label(), Stage.CONFIRM, "", List.of(),
                new Outcome.Read(new Finding(corals, 0, 0, 0, "", 0, true)), 1);
        return new Offer(set, Optional.of(new Proposal(new Ranked(trial, 0), Optional.of(new Sturdiness(List.of())),
                false)), List.of(), Optional.empty(), true, Optional.empty());
    }

    /** Three models, one to three pumps: 9 sets of one model; with repeats 3 + 6 + 10 choices (exact). */
    @Test
    void setsAreCountedRight() {
        assertEquals(9, PumpSet.ofOneModel(MODELS, 1, 3).size());
        List<PumpSet> mixed = PumpSet.mixed(MODELS, 1, 3);
        assertEquals(19, mixed.size());
        assertEquals(19, mixed.stream().distinct().count());
        PumpSet set = new PumpSet(List.of(MODELS.get(0), MODELS.get(0), MODELS.get(2)));
        assertEquals("2 x a + c", set.label());
        assertEquals(300, set.price().getAsDouble());
        assertEquals(List.of("a 1", "a 2", "c 3"), set.pieces().stream().map(Piece::name).toList());
        assertEquals("no pumps", new PumpSet(List.of()).label());
    }

    @Test
    void theFrontIsWhatNoOtherBeats() {
        List<PumpSet> one = PumpSet.ofOneModel(MODELS, 1, 2);
        // Prices 50, 100, 120, 240, 200, 400.
        List<Offer> offers = List.of(offer(new PumpSet(List.of()), 0), offer(one.get(0), 2), offer(one.get(1), 2),
                offer(one.get(2), 4), offer(one.get(3), 4), offer(one.get(4), 3), offer(one.get(5), 4));
        assertEquals(List.of("no pumps", "a", "b"), Front.of(offers).stream().map(each -> each.set().label()).toList());
        assertEquals("b", Front.cheapestInRange(offers).orElseThrow().set().label());
    }

    @Test
    void noneMayBeEnough() {
        List<Offer> offers = List.of(offer(new PumpSet(List.of(MODELS.get(0))), 3),
                offer(new PumpSet(List.of(MODELS.get(1))), 2));
        assertTrue(Front.cheapestInRange(offers).isEmpty());
    }

    /** A mean in range is not yet a coral that passes: doubt may reach beyond the limits. */
    @Test
    void inRangeIsNotYetCertain() {
        Offer cheap = offer(new PumpSet(List.of(MODELS.get(0))), 4, 3);
        Offer dear = offer(new PumpSet(List.of(MODELS.get(2))), 4, 4);
        assertTrue(cheap.isInRange() && !cheap.isCertain() && dear.isCertain());
        assertEquals(Optional.of(cheap), Front.cheapestInRange(List.of(dear, cheap)));
        assertEquals(Optional.of(dear), Front.cheapestCertain(List.of(dear, cheap)));
        assertEquals(Optional.empty(), Front.cheapestCertain(List.of(cheap)));
    }
}
