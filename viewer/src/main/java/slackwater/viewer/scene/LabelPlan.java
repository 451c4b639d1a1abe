package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Finds each label a place near its point where it covers no other label and, if it can be, no other point. */
public final class LabelPlan {
    private static final double[] REACHES = {12, 24, 42, 66, 96, 136, 186, 250};
    private static final int WAYS = 16;
    private static final double GAP = 4;
    private static final double COVERED_POINT = 60;
    /** Half of what a label below its point costs more than one above, where things stand less often. */
    private static final double BELOW = 12;
    private static final double OUTSIDE = 100_000;
    private static final double COVERED_LABEL = 10_000;

    private LabelPlan() {
    }

    /** A rectangle on the picture, any unit. */
    public record Area(double x, double y, double width, double height) {
        boolean overlaps(Area other) {
            return x < other.x + other.width + GAP && other.x < x + width + GAP
                    && y < other.y + other.height + GAP && other.y < y + height + GAP;
        }

        boolean holds(Pin pin) {
            return pin.x >= x - GAP && pin.x <= x + width + GAP && pin.y >= y - GAP && pin.y <= y + height + GAP;
        }

        boolean isWithin(Area other) {
            return x >= other.x && y >= other.y && x + width <= other.x + other.width
                    && y + height <= other.y + other.height;
        }
    }

    /** The point that a label belongs to, how far off it to keep, and the label's size. */
    public record Pin(double x, double y, double clear, double width, double height) {
    }

    /** One area a pin, in their order, inside the page as long as there is room. */
    public static List<Area> place(List<Pin> pins, Area page, List<Area> taken) {
        Area[] placed = new Area[pins.size()];
        List<Area> full = new ArrayList<>(taken);
        List<Integer> order = IntStream.range(0, pins.size()).boxed()
                .sorted(Comparator.comparingDouble((Integer n) -> pins.get(n).y()).thenComparing(n -> n)).toList();
        for (int n : order) {
            placed[n] = best(pins.get(n), pins, page, full);
            full.add(placed[n]);
        }
        return List.of(placed);
    }

    private static Area best(Pin pin, List<Pin> pins, Area page, List<Area> full) {
        Area best = at(pin, 0, -1, pin.clear() + REACHES[0]);
        double least = Double.MAX_VALUE;
        for (double reach : REACHES) {
            for (int way = 0; way < WAYS; way++) {
                double angle = 2 * Math.PI * way / WAYS;
                Area area = at(pin, Math.cos(angle), Math.sin(angle), pin.clear() + reach);
                double cost = cost(area, pin, pins, page, full) + reach + BELOW * (1 + Math.sin(angle));
                if (cost < least) {
                    least = cost;
                    best = area;
                }
            }
        }
        return best;
    }

    /** The label with its nearest edge or corner a reach away from its point. */
    private static Area at(Pin pin, double across, double down, double reach) {
        return new Area(pin.x() + across * (reach + pin.width() / 2) - pin.width() / 2,
                pin.y() + down * (reach + pin.height() / 2) - pin.height() / 2, pin.width(), pin.height());
    }

    private static double cost(Area area, Pin own, List<Pin> pins, Area page, List<Area> full) {
        double cost = area.isWithin(page) ? 0 : OUTSIDE;
        cost += COVERED_LABEL * full.stream().filter(area::overlaps).count();
        return cost + COVERED_POINT * pins.stream().filter(pin -> pin != own && area.holds(pin)).count();
    }
}
