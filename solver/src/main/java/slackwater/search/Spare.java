package slackwater.search;

import java.util.List;
import java.util.Optional;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

/**
 * How far all outputs may go down or up together with every coral that is in range staying there.
 *
 * @param lowestFraction of the set outputs, 0..1, and no further than every pump can be turned down; 1 where there is
 *     nothing to spare
 * @param highestFraction of the set outputs, at least 1 and no further than every pump can be turned up
 * @param exact whether speeds go in proportion to the outputs here; where not, it is a rough guide
 */
public record Spare(double lowestFraction, double highestFraction, boolean exact) {
    /**
     * From the readings, every speed taken in proportion to the outputs.
     *
     * @param pieces what the pumps of the scenario are, in their order
     * @return empty where no coral is in range, since there is nothing to keep, or no pump to turn
     */
    public static Optional<Spare> of(Scenario scenario, List<Piece> pieces, Finding finding) {
        List<Pump> pumps = scenario.pumps();
        if (finding.inRange() == 0 || pumps.stream().noneMatch(pump -> pump.outputFraction() > 0)) {
            return Optional.empty();
        }
        double low = 0;
        double high = 1 / pumps.stream().mapToDouble(Pump::outputFraction).max().orElse(1);
        for (int n = 0; n < pumps.size(); n++) {
            if (pumps.get(n).outputFraction() > 0) {
                low = Math.max(low, pieces.get(n).model().leastOutputFraction() / pumps.get(n).outputFraction());
            }
        }
        for (CoralFinding coral : finding.corals()) {
            if (coral.inRange() && coral.meanMPerS() > 0) {
                low = Math.max(low, coral.wantedLowMPerS() / coral.meanMPerS());
                high = Math.min(high, coral.wantedHighMPerS() / coral.meanMPerS());
            }
        }
        return Optional.of(new Spare(Math.min(1, low), Math.max(1, high), Sturdiness.scalesWithPumps(scenario)));
    }
}
