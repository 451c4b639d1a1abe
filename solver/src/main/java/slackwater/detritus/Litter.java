package slackwater.detritus;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a run says of sand, food and waste.
 *
 * @param clearances two for each coral, food and then sand, in the order of the scenario
 * @param fates what becomes of food and waste in the tank
 * @param drift every grain that was followed, for pictures
 * @param recordS seconds of recorded water that were played again and again
 */
public record Litter(List<Clearance> clearances, List<Fate> fates, Drift drift, double recordS) {
    /** Those of one coral. */
    public List<Clearance> of(int coral) {
        return clearances.stream().filter(clearance -> clearance.coral() == coral).collect(Collectors.toList());
    }
}
