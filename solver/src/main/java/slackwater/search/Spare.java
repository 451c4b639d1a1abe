package slackwater.search;

import slackwater.scenario.Scenario;

/**
 * How far all outputs may go down or up together with every coral that is in range staying there.
 *
 * @param lowestFraction of the set outputs, 0..1; 1 where there is nothing to spare
 * @param highestFraction of the set outputs, at least 1 and no further than the pumps go
 * @param exact whether speeds go in proportion to the outputs here; where not, it is a rough guide
 */
public record Spare(double lowestFraction, double highestFraction, boolean exact) {
    /** From the readings, every speed taken in proportion to the outputs. */
    public static Spare of(Scenario scenario, Finding finding) {
        double low = 0;
        double high = 1 / scenario.pumps().stream().mapToDouble(pump -> pump.outputFraction()).max().orElse(1);
        for (CoralFinding coral : finding.corals()) {
            if (coral.inRange() && coral.meanMPerS() > 0) {
                low = Math.max(low, coral.wantedLowMPerS() / coral.meanMPerS());
                high = Math.min(high, coral.wantedHighMPerS() / coral.meanMPerS());
            }
        }
        return new Spare(Math.min(1, low), Math.max(1, high), Sturdiness.scalesWithPumps(scenario));
    }
}
