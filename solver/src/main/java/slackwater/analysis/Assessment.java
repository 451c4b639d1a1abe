package slackwater.analysis;

import java.util.List;
import java.util.Optional;

/**
 * What the flow means for the tank.
 *
 * @param verdict the worst of the corals' verdicts; NONE without corals
 * @param summary the verdict in one or two plain sentences
 * @param corals one reading a coral, in the order of the scenario
 * @param waterVolumeM3 water between sand and surface, rock taken off
 * @param stillWater water that hardly moves
 * @param histogram how much of the water moves how fast
 * @param surface movement of the surface
 * @param sandBed the water above the sand; empty without sand
 * @param turnover rated flow over volume
 * @param confidence what the doubt of all this rests on
 * @param leavings where food and waste come to lie; empty if that was not tried
 */
public record Assessment(Verdict verdict, String summary, List<CoralReading> corals, double waterVolumeM3,
                         StillWater stillWater, SpeedHistogram histogram, SurfaceMovement surface,
                         Optional<SandBed> sandBed, Turnover turnover, Confidence confidence,
                         Optional<Leavings> leavings) {
}
