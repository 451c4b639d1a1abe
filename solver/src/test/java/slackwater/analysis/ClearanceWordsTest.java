package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.detritus.Clearance;
import slackwater.detritus.Grains;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Scenario;

/** The rule from clearing to verdict, and its words. */
class ClearanceWordsTest {
    private static final String WHY = "gusts drag with 0.200 Pa, and it lifts at about 0.300 Pa";
    private static final Scenario TANK = MadeUpTank.scenario();
    private static final Clearance.Course QUICK = new Clearance.Course(1, OptionalDouble.of(4), OptionalDouble.of(9),
            0);
    private static final Clearance.Course SLOW = new Clearance.Course(1, OptionalDouble.of(80), OptionalDouble.empty(),
            0.3);
    private static final Clearance.Course NEVER = new Clearance.Course(1, OptionalDouble.empty(),
            OptionalDouble.empty(), 1);

    @Test
    void whatClearsPassesAndWhatStaysFailsThoseThatNeedTheWater() {
        for (CoralGroup group : CoralGroup.values()) {
            boolean needs = group == CoralGroup.PLATING || group == CoralGroup.SMALL_POLYP;
            assertEquals(Verdict.PASS, verdict(group, food(QUICK, QUICK, QUICK)));
            assertEquals(Verdict.MARGINAL, verdict(group, food(QUICK, QUICK, SLOW)));
            assertEquals(Verdict.MARGINAL, verdict(group, food(QUICK, NEVER, NEVER)));
            assertEquals(needs ? Verdict.FAIL : Verdict.MARGINAL, verdict(group, food(NEVER, NEVER, NEVER)));
            assertEquals(Verdict.NONE, ClearanceWords.verdict(coral(group), List.of()));
        }
    }

    @Test
    void sandCountsForPlatesAlone() {
        Clearance sand = of(Grains.SAND, NEVER, NEVER, NEVER);
        Clearance food = food(QUICK, QUICK, QUICK);
        assertEquals(Verdict.FAIL, ClearanceWords.verdict(coral(CoralGroup.PLATING), List.of(food, sand)));
        assertEquals(Verdict.PASS, ClearanceWords.verdict(coral(CoralGroup.SMALL_POLYP), List.of(food, sand)));
        assertEquals("; food on it is gone in 9 s; sand on it stays: " + WHY,
                ClearanceWords.of(coral(CoralGroup.PLATING), List.of(food, sand)));
        assertEquals("; food on it is gone in 9 s", ClearanceWords.of(coral(CoralGroup.SOFT), List.of(food, sand)));
    }

    @Test
    void theDoubtIsInTheWords() {
        assertEquals("; food on it is gone in 9 s, but if it clings twice as hard 30 % stays (" + WHY + ")",
                ClearanceWords.of(coral(CoralGroup.SOFT), List.of(food(QUICK, QUICK, SLOW))));
        assertEquals("; 30 % of the food on it is still there after 5 min, but it may go if it clings half as hard ("
                + WHY + ")",
                ClearanceWords.of(coral(CoralGroup.SOFT), List.of(food(QUICK, SLOW, NEVER))));
        assertEquals("; food on it is gone in 9 s, but if it clings 3.4 times as hard 30 % stays (" + WHY + ")",
                ClearanceWords.of(coral(CoralGroup.SOFT), List.of(of(Grains.FOOD, List.of(QUICK, QUICK,
                        at(3.437, SLOW))))), "where the speed is in doubt too");
        assertEquals("; 30 % of the food on it is still there after 5 min, but it may go if it clings 0.4 times as hard"
                + " (" + WHY + ")", ClearanceWords.of(coral(CoralGroup.SOFT), List.of(of(Grains.FOOD,
                        List.of(at(0.381, QUICK), SLOW, NEVER)))));
        assertEquals("9 s (9 s to 30 % stays)", ClearanceWords.range(food(QUICK, QUICK, SLOW)));
        assertEquals("30 % stays (30 % to 100 %)", ClearanceWords.range(food(SLOW, SLOW, NEVER)));
        assertEquals("stays", ClearanceWords.range(food(NEVER, NEVER, NEVER)));
        assertEquals("89 s", ClearanceWords.time(89));
        assertEquals("2 min", ClearanceWords.time(120));
    }

    private static Verdict verdict(CoralGroup group, Clearance clearance) {
        return ClearanceWords.verdict(coral(group), List.of(clearance));
    }

    private static Coral coral(CoralGroup group) {
        return new Coral("coral", group, Vec3.ZERO, new Vec3(0, 0, 1), 0.1, Optional.empty());
    }

    private static Clearance food(Clearance.Course half, Clearance.Course once, Clearance.Course twice) {
        return of(Grains.FOOD, half, once, twice);
    }

    private static Clearance of(String name, Clearance.Course half, Clearance.Course once, Clearance.Course twice) {
        return of(name, List.of(at(0.5, half), once, at(2, twice)));
    }

    private static Clearance of(String name, List<Clearance.Course> courses) {
        return new Clearance(0, 0.1, 0.2, 0.3, Grains.named(name, TANK).orElseThrow(), courses);
    }

    private static Clearance.Course at(double hold, Clearance.Course course) {
        return new Clearance.Course(hold, course.halfS(), course.clearS(), course.leftFraction());
    }
}
