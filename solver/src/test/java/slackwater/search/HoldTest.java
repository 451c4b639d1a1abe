package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.pump.catalogue.PumpModel;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Overflow;
import slackwater.scenario.Pump;
import slackwater.scenario.Return;
import slackwater.scenario.Scenario;
import slackwater.scenario.Wall;

/** Whether layouts hold, what there is to spare, and that a layout is chosen by what it keeps. */
class HoldTest {
    @TempDir
    private Path folder;

    private static Finding finding(double... speedsMPerS) {
        List<CoralFinding> corals = new ArrayList<>();
        for (int n = 0; n < speedsMPerS.length; n++) {
            corals.add(new CoralFinding("c" + n, speedsMPerS[n], 0, 1, 0.05, 0.5, Verdict.MARGINAL));
        }
        return new Finding(corals, 0, 0, 0, "", 0, true);
    }

    private static Scenario tank(double yawDeg) {
        return Tanks.with(List.of(Tanks.pump("a", 0.04, yawDeg)), List.of(
                Tanks.coral("c0", CoralGroup.SMALL_POLYP, 0.5, 0.25, 0.2)));
    }

    private Sturdiness tried(Scenario scenario, Finding confirmed, Function<Scenario, Outcome> function,
                             List<Trial> made) throws Exception {
        try (TrialLog log = TrialLog.open(folder.resolve("log-" + System.nanoTime()))) {
            return Sturdiness.of(scenario, confirmed, new Trials(Stage.HOLD, "test", function, log, made::add));
        }
    }

    @Test
    void steadyPumpsAloneAreScaledAndAimsAreComputed() throws Exception {
        List<Trial> made = new ArrayList<>();
        Sturdiness safe = tried(tank(0), finding(0.0626), scenario -> new Outcome.Read(finding(0.03)), made);
        assertEquals(5, made.size());
        assertEquals(Sturdiness.runs(tank(0)), made.size());
        assertTrue(safe.holds());
        assertFalse(safe.checks().get(0).computed());
        Sturdiness close = tried(tank(0), finding(0.0624), scenario -> new Outcome.Read(finding(0.03)),
                new ArrayList<>());
        assertEquals(List.of("c0"), close.checks().get(0).fallen(), "0.8 x 6.24 cm/s is below 5 cm/s");
    }

    /** What the aim changes on other cells counts as a ratio: a third of the speed lost is too much here. */
    @Test
    void aimsCountByTheirRatio() throws Exception {
        Function<Scenario, Outcome> shy = scenario -> new Outcome.Read(finding(
                scenario.pumps().get(0).yawRad() > 0.01 ? 0.02 : 0.03));
        assertEquals(List.of("aims 5 degrees further left"), tried(tank(0), finding(0.07), shy, new ArrayList<>())
                .checks().stream().filter(check -> !check.holds()).map(Sturdiness.Check::name).toList());
    }

    @Test
    void withAReturnTheWeakerTankIsComputed() throws Exception {
        Scenario bare = tank(0);
        Scenario fed = new Scenario("invented", bare.tank(), List.of(), bare.pumps(), Optional.of(new Return(3e-4, 0.02,
                new Vec3(0.9, 0.45, 0.4), Math.PI, 0)), Optional.of(new Overflow(Wall.BACK, 0.2, 0.5)), bare.corals());
        List<Trial> made = new ArrayList<>();
        Sturdiness tried = tried(fed, finding(0.07), scenario -> new Outcome.Read(finding(0.03)), made);
        assertTrue(tried.checks().get(0).computed());
        assertEquals(6, made.size());
        assertEquals(0.6 * 0.8, made.get(1).pumps().get(0).outputFraction(), 1e-12);
    }

    @Test
    void aFailedRunHoldsNothing() throws Exception {
        Function<Scenario, Outcome> shaky = scenario -> scenario.pumps().get(0).pitchRad() > 0.01
                ? new Outcome.Failed("ran away") : new Outcome.Read(finding(0.03));
        assertFalse(tried(tank(0), finding(0.2), shaky, new ArrayList<>()).holds());
    }

    /** What an aim changes is a ratio to the layout itself: where that run failed, no other speed says a thing. */
    @Test
    void withoutTheLayoutItselfNothingIsKnown() throws Exception {
        Function<Scenario, Outcome> shaky = scenario -> isNear(scenario, 0) ? new Outcome.Failed("ran away")
                : new Outcome.Read(finding(0.2, 0.01));
        Finding confirmed = finding(0.2, 0.01);
        Sturdiness tried = tried(tank(0), confirmed, shaky, new ArrayList<>());
        assertTrue(tried.checks().get(0).holds(), "speeds in proportion need no run");
        for (Sturdiness.Check check : tried.checks().subList(1, 5)) {
            assertFalse(check.known() || check.holds(), check.name());
            assertEquals(List.of("c0"), check.fallen(), "only what was in range can be lost");
        }
        try (TrialLog log = TrialLog.open(folder.resolve("log"))) {
            Sturdiness.Check stops = Sturdiness.outages(tank(0), confirmed, new Trials(Stage.HOLD, "test",
                    scenario -> scenario.pumps().isEmpty() || scenario.pumps().get(0).outputFraction() == 0
                            ? new Outcome.Read(finding(0.2, 0.01)) : new Outcome.Failed("ran away"), log,
                    trial -> { })).get(0);
            assertFalse(stops.known() || stops.holds());
        }
    }

    /** 10 cm/s may halve before it is below 5, and 25 may double; the pump at 60 % can give 1.67 times as much. */
    @Test
    void spareIsWhatTheTightestCoralAllows() {
        Spare spare = spare(0, finding(0.1, 0.25, 0.01));
        assertEquals(0.5, spare.lowestFraction(), 1e-12);
        assertEquals(1 / 0.6, spare.highestFraction(), 1e-12);
        assertTrue(spare.exact());
        assertEquals(1.25, spare(0, finding(0.4)).highestFraction(), 1e-12);
    }

    /** 25 cm/s could go down to a fifth; a pump at 60 % that runs from 45 % on cannot go below 0.45/0.6. */
    @Test
    void spareEndsWhereThePumpDoes() {
        assertEquals(0.2, spare(0.1, finding(0.25)).lowestFraction(), 1e-12, "the coral decides");
        assertEquals(0.75, spare(0.45, finding(0.25)).lowestFraction(), 1e-12, "the pump decides");
        assertEquals(1, spare(1, finding(0.25)).lowestFraction(), 1e-12, "one that cannot be turned down");
    }

    @Test
    void withNoCoralInRangeThereIsNothingToSpare() {
        assertEquals(Optional.empty(), Spare.of(tank(0), List.of(piece(0.3)), finding(0.01, 0.9)));
    }

    private static Spare spare(double leastOutput, Finding finding) {
        return Spare.of(tank(0), List.of(piece(leastOutput)), finding).orElseThrow();
    }

    private static Piece piece(double leastOutput) {
        PumpModel own = PumpModel.of(tank(0).pumps().get(0));
        return Piece.of("a", new PumpModel(own.name(), own.origin(), own.makersFlowM3PerS(), 1, 0, own.outlet(), 1,
                own.powerW(), own.price(), leastOutput, 1, 0.05, 2, own.bodyM()));
    }

    /** Of two confirmed layouts the one that keeps its coral wins, even where the other reads a little better. */
    @Test
    void theLayoutThatKeepsMoreIsChosen() throws Exception {
        Scenario sharp = tank(0);
        Scenario sturdy = tank(30);
        Task task = Task.ofOwnPumps(sharp, Wishes.NONE, Objective.USUAL);
        Function<Scenario, Outcome> fine = scenario -> new Outcome.Read(finding(
                scenario.pumps().get(0).yawRad() < 0.1 ? 0.20 : 0.15));
        Function<Scenario, Outcome> hold = scenario -> new Outcome.Read(finding(isNear(scenario, 0) ? 0.02
                : isNear(scenario, Math.toRadians(5)) ? 0.001 : 0.02));
        try (TrialLog log = TrialLog.open(folder.resolve("log"))) {
            Trials screen = new Trials(Stage.SCREEN, "test", fine, log, trial -> { });
            Trials confirm = new Trials(Stage.CONFIRM, "test", fine, log, trial -> { });
            List<Ranked> screened = List.of(task.rank(screen.of(sharp)), task.rank(screen.of(sturdy)));
            Runs runs = new Runs(screen, new Trials(Stage.SIFT, "test", fine, log, trial -> { }), confirm,
                    new Trials(Stage.HOLD, "test", hold, log, trial -> { }));
            Placing placing = Placing.confirmed(task, screened, runs, 2);
            assertEquals(2, placing.proposals().size());
            assertEquals(sturdy.pumps(), placing.best().orElseThrow().confirmed().trial().pumps());
            assertTrue(placing.best().orElseThrow().holds());
            assertEquals(0.20, placing.asItIs().orElseThrow().corals().get(0).meanMPerS());
        }
    }

    /** Large cells praise the wrong one; the second look finds it out, and only the right one and the start are run. */
    @Test
    void aSecondLookCorrectsLargeCells() throws Exception {
        Task task = Task.ofOwnPumps(tank(0), Wishes.NONE, Objective.USUAL);
        Function<Scenario, Outcome> wrong = scenario -> new Outcome.Read(finding(
                scenario.pumps().get(0).yawRad() > 0.9 ? 0.2 : 0.07));
        Function<Scenario, Outcome> right = scenario -> new Outcome.Read(finding(
                scenario.pumps().get(0).yawRad() > 0.9 ? 0.01 : scenario.pumps().get(0).yawRad() > 0.4 ? 0.2 : 0.06));
        List<Trial> confirmed = new ArrayList<>();
        try (TrialLog log = TrialLog.open(folder.resolve("log"))) {
            Runs runs = new Runs(new Trials(Stage.SCREEN, "test", wrong, log, trial -> { }),
                    new Trials(Stage.SIFT, "test", right, log, trial -> { }),
                    new Trials(Stage.CONFIRM, "test", right, log, confirmed::add),
                    new Trials(Stage.HOLD, "test", right, log, trial -> { }));
            List<Ranked> screened = new ArrayList<>();
            for (double yawDeg : new double[] {60, 30, 0}) {
                screened.add(task.rank(runs.screen().of(tank(yawDeg))));
            }
            Placing placing = Placing.confirmed(task, Island.sorted(screened), runs, 1);
            assertEquals(List.of(tank(30).pumps(), tank(0).pumps()), confirmed.stream().map(Trial::pumps).toList());
            assertEquals(tank(30).pumps(), placing.best().orElseThrow().confirmed().trial().pumps());
        }
    }

    private static boolean isNear(Scenario scenario, double yawRad) {
        Pump pump = scenario.pumps().get(0);
        return Math.abs(pump.yawRad() - yawRad) < 0.01 && pump.pitchRad() == 0;
    }

    @Test
    void largeCellsAreBroughtUpByTheMedian() {
        assertEquals(1.5, Anchor.factor(new Outcome.Read(finding(0.1, 0.1, 0.1)),
                new Outcome.Read(finding(0.12, 0.15, 0.9))), 1e-12);
        assertEquals(2.5, Anchor.factor(new Outcome.Read(finding(0.01)), new Outcome.Read(finding(0.9))));
        assertEquals(1, Anchor.factor(new Outcome.Failed("x"), new Outcome.Read(finding(0.9))));
        assertEquals(1, Anchor.factor(new Outcome.Read(finding(0.0)), new Outcome.Read(finding(0.9))));
    }
}
