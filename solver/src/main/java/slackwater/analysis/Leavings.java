package slackwater.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slackwater.detritus.Fate;
import slackwater.detritus.Litter;
import slackwater.detritus.Place;
import slackwater.field.Grid;
import slackwater.scenario.Scenario;

/**
 * Where food and waste come to lie.
 *
 * @param litter the tries
 * @param heaps one list for each of its fates: where most of it lies, the largest share first
 */
public record Leavings(Litter litter, List<List<Heap>> heaps) {
    private static final int LISTED = 5;
    private static final double LEAST = 0.02;

    /**
     * What lies in one part of the tank.
     *
     * @param place in words
     * @param shareFraction of all that was let go, 0..1
     */
    public record Heap(String place, double shareFraction) {
    }

    static Leavings of(Litter litter, Scenario scenario, Grid grid) {
        return new Leavings(litter, litter.fates().stream().map(fate -> heaps(fate, scenario, grid)).toList());
    }

    /** The places of what lies after a try. */
    public static List<Heap> heaps(Fate fate, Scenario scenario, Grid grid) {
        Places places = new Places(scenario);
        Map<String, Double> shares = new LinkedHashMap<>();
        double cellM2 = grid.cellSizeM() * grid.cellSizeM();
        for (int cell = 0; cell < fate.depositPerM2().length; cell++) {
            if (fate.depositPerM2()[cell] > 0) {
                shares.merge(places.of(grid.centreM(cell)), fate.depositPerM2()[cell] * cellM2, Double::sum);
            }
        }
        List<Heap> heaps = new ArrayList<>();
        shares.forEach((place, share) -> heaps.add(new Heap(place, share)));
        return heaps.stream().filter(heap -> heap.shareFraction() >= LEAST)
                .sorted(Comparator.comparingDouble(Heap::shareFraction).reversed()).limit(LISTED).toList();
    }

    /** What became of something at the end, in one sentence. */
    public static String sentence(Fate fate, List<Heap> heaps) {
        List<String> parts = new ArrayList<>();
        for (Place place : Place.values()) {
            if (fate.last().at(place) >= 0.005) {
                parts.add(Figures.percent(fate.last().at(place)) + " " + place.words());
            }
        }
        String name = fate.grain().name();
        String most = heaps.isEmpty() ? "" : "; most lies " + heaps.get(0).place() + " ("
                + Figures.percent(heaps.get(0).shareFraction()) + ")";
        return Character.toUpperCase(name.charAt(0)) + name.substring(1) + " " + fate.from() + ", after "
                + ClearanceWords.time(fate.last().timeS()) + ": " + String.join(", ", parts) + most + ".";
    }
}
