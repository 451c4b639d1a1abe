package slackwater.search;

import java.util.List;
import slackwater.analysis.Assessment;
import slackwater.analysis.BedAndRock;
import slackwater.analysis.SandBed;

/**
 * What a trial found.
 *
 * @param corals one a coral, in the order of the scenario
 * @param stillShareFraction share of the water close to bed and rock that is expected to stand still, 0..1
 * @param strongShareFraction share of that water that is too fast for any coral, 0..1
 * @param stillM3 still water in the whole tank, expected
 * @param stillest where the largest stretch of still water is, in words; may be empty
 * @param sandFraction how near the strongest gust over the sand comes to moving it, by speed above it or by stress on
 *     it, whichever is worse; from 1 on it moves; 0 without sand
 * @param settled whether the readings had stopped changing; never so in a short screening run
 */
public record Finding(List<CoralFinding> corals, double stillShareFraction, double strongShareFraction,
                      double stillM3, String stillest, double sandFraction, boolean settled) {
    public static Finding of(Assessment assessment, BedAndRock close, boolean settled) {
        double water = Math.max(1e-9, close.waterM3());
        return new Finding(assessment.corals().stream().map(CoralFinding::of).toList(), close.stillM3() / water,
                close.strongM3() / water, assessment.stillWater().expectedM3(),
                assessment.stillWater().regions().isEmpty() ? "" : assessment.stillWater().regions().get(0).place(),
                assessment.sandBed().map(SandBed::fraction).orElse(0.0), settled);
    }

    /** How many corals have a mean speed outside of what they want, or keep what falls on them. */
    public int out() {
        return (int) corals.stream().filter(coral -> !coral.inRange()).count();
    }

    public int inRange() {
        return corals.size() - out();
    }

    /** The names of the corals that are out of range, in the order of the scenario. */
    public List<String> outNames() {
        return corals.stream().filter(coral -> !coral.inRange()).map(CoralFinding::name).toList();
    }
}
