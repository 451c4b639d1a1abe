package slackwater.viewer.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.Legend.Bar;
import slackwater.viewer.scene.Legend.Patch;
import slackwater.viewer.scene.Legend.Patches;

/** Legends side by side and above each other: laws on random input. */
class LegendPlanTest {
    private static Legend patches(int count, int letters) {
        return new Patches("", IntStream.range(0, count)
                .mapToObj(n -> new Patch(Colour.of(0), "word ".repeat(letters / 5).strip())).toList());
    }

    private static Legend bar() {
        return new Bar("mean speed, cm/s", ColourScale.ofSpeed(0.2));
    }

    /** As wide as its letters were counted, or as a bar. */
    private static double width(LegendPlan plan, LegendPlan.Spot spot) {
        return spot.legend() instanceof Bar ? plan.barWidth() : LegendPlan.PATCH + spot.lines().stream()
                .flatMap(List::stream).mapToDouble(line -> 6.5 * line.length()).max().orElse(0);
    }

    @Test
    void noneLiesOnAnotherOrOutside() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            double wide = 260 + random.nextInt(1200);
            List<Legend> legends = IntStream.range(0, random.nextInt(5)).mapToObj(n -> random.nextBoolean() ? bar()
                    : patches(1 + random.nextInt(4), 5 + random.nextInt(45))).toList();
            LegendPlan plan = LegendPlan.of(legends, wide, random.nextBoolean() ? 100 : 0);
            assertEquals(legends, plan.spots().stream().map(LegendPlan.Spot::legend).toList());
            for (LegendPlan.Spot one : plan.spots()) {
                assertTrue(one.x() + width(plan, one) <= wide, "seed " + seed);
                assertTrue(one.up() + one.height() <= plan.height() + 1e-9, "seed " + seed);
                for (LegendPlan.Spot other : plan.spots()) {
                    boolean beside = one.x() + width(plan, one) <= other.x()
                            || other.x() + width(plan, other) <= one.x();
                    boolean above = one.up() >= other.up() + other.height() || other.up() >= one.up() + one.height();
                    assertTrue(one == other || beside || above, "seed " + seed);
                }
            }
        }
    }

    @Test
    void theLowestRowLeavesTheRulerItsRoom() {
        LegendPlan plan = LegendPlan.of(List.of(bar(), patches(4, 30), bar()), 900, 130);
        for (LegendPlan.Spot spot : plan.spots()) {
            assertTrue(spot.up() > LegendPlan.EDGE || spot.x() + width(plan, spot) <= 900 - 130 - LegendPlan.EDGE);
        }
        LegendPlan narrow = LegendPlan.of(List.of(bar()), 260, 100);
        assertTrue(narrow.spots().get(0).up() > 2 * LegendPlan.LINE, "above the ruler");
    }

    /** Narrower bars where that saves a row; wide ones where there is room. */
    @Test
    void barsGiveWay() {
        assertEquals(240, LegendPlan.of(List.of(bar(), patches(3, 35)), 1000, 100).barWidth());
        LegendPlan tight = LegendPlan.of(List.of(bar(), patches(4, 35), patches(3, 30)), 940, 100);
        assertEquals(185, tight.barWidth());
        assertEquals(1, tight.spots().stream().map(LegendPlan.Spot::up).distinct().count());
    }
}
