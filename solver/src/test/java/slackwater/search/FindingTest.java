package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slackwater.analysis.Assessment;
import slackwater.analysis.BedAndRock;
import slackwater.analysis.Confidence;
import slackwater.analysis.SandBed;
import slackwater.analysis.SpeedHistogram;
import slackwater.analysis.StillWater;
import slackwater.analysis.SurfaceMovement;
import slackwater.analysis.Turnover;
import slackwater.analysis.Verdict;
import slackwater.scenario.Pump;

/** What of an assessment the search goes by. */
class FindingTest {
    /** Over sand that moves at 40 cm/s or under 0.2 Pa. */
    private static Finding finding(double gustMPerS, double gustPa) {
        SandBed bed = new SandBed(0.05, 0.1, gustMPerS, 0.40, 0, new SandBed.Shear(gustPa, 0.20, 0), "middle", "");
        StillWater still = new StillWater(List.of(), 0, 0, 0, 0, 0, 0, 0, new float[0]);
        Confidence confidence = new Confidence(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                0, List.of(), List.of());
        return Finding.of(new Assessment(Verdict.NONE, "", List.of(), 0.1, still, new SpeedHistogram(List.of()),
                new SurfaceMovement(0.1, 0), Optional.of(bed), new Turnover(10, 0), confidence, Optional.empty()),
                new BedAndRock(0.01, 0, 0), true);
    }

    /** Stress goes with the square of speed, so 0.45 Pa on sand that moves at 0.2 Pa is sqrt(2.25) = 1.5 of it. */
    @Test
    void theWorseOfSpeedAndStressMovesTheSand() {
        assertEquals(1.5, finding(0.20, 0.45).sandFraction(), 1e-12, "stress decides");
        assertEquals(1.25, finding(0.50, 0.05).sandFraction(), 1e-12, "speed decides");
    }

    /** Two layouts with equal gusts above the sand: the one whose gusts tear at it ranks behind. */
    @Test
    void stressAloneMakesALayoutWorse() {
        List<Pump> pumps = List.of(Tanks.pump("a", 0.04, 0));
        List<Piece> pieces = List.of(Piece.of(pumps.get(0)));
        double calm = Objective.USUAL.value(new Outcome.Read(finding(0.20, 0.05)), pieces, pumps);
        double torn = Objective.USUAL.value(new Outcome.Read(finding(0.20, 0.45)), pieces, pumps);
        assertTrue(calm < torn, calm + " against " + torn);
    }
}
