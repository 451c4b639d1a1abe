package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.field.ProbeSeries;
import slackwater.field.RunQuality;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;
import slackwater.scenario.Tank;

class AssessorTest {
    private static final Coral PLATE = MadeUpTank.coral("plate", CoralGroup.PLATING, new Vec3(0.6, 0.25, 0.2), 0.1);
    private static final Rock MOUND = new Rock("left mound",
            new Ellipsoid(new Vec3(0.35, 0.25, 0.2), new Vec3(0.1, 0.1, 0.1)));
    private static final Pump LEFT = MadeUpTank.pump("left", new Vec3(0.04, 0.25, 0.2), 0, 0, 1);

    @Test
    void judgesByTheLimitsAndTheDoubt() {
        SpeedRange range = CoralNeeds.of(CoralGroup.PLATING);
        assertEquals(Verdict.PASS, verdict(0.10, 0.01, range, true));
        assertEquals(Verdict.MARGINAL, verdict(0.10, 0.01, range, false));
        assertEquals(Verdict.FAIL, verdict(0.02, 0.01, range, true));
        assertEquals(Verdict.FAIL, verdict(0.02, 0.01, range, false));
        assertEquals(Verdict.FAIL, verdict(0.40, 0.01, range, true));
        assertEquals(Verdict.MARGINAL, verdict(0.035, 0.01, range, true));
        assertEquals(Verdict.MARGINAL, verdict(0.045, 0.01, range, true));
        assertEquals(Verdict.MARGINAL, verdict(0.345, 0.01, range, true));
        assertEquals(Verdict.MARGINAL, verdict(0.10, Double.POSITIVE_INFINITY, range, true));
    }

    @Test
    void aSmallPolypCoralNeedsMoreThanAPlatingOne() {
        assertTrue(CoralNeeds.of(CoralGroup.SMALL_POLYP).lowMPerS() > CoralNeeds.of(CoralGroup.PLATING).lowMPerS());
    }

    @Test
    void everyRangeSaysWhereItComesFrom() {
        for (CoralGroup group : CoralGroup.values()) {
            SpeedRange range = CoralNeeds.of(group);
            assertTrue(range.lowMPerS() > 0 && range.lowMPerS() < range.highMPerS());
            assertTrue(range.source().contains("no source"), group + " rests at least in part on common practice");
        }
    }

    @Test
    void tellsTheShadeOfARock() {
        assertEquals("2.1 cm/s: food and sand will lie on it; the left mound shades it from pump 'left'",
                sentence(List.of(MOUND), List.of(LEFT), 0.021));
    }

    @Test
    void tellsAnAimThatMisses() {
        Pump high = MadeUpTank.pump("left", new Vec3(0.2, 0.25, 0.215), 47, 0, 1);
        assertEquals("2.1 cm/s: food and sand will lie on it; it lies 47 degrees off the aim of pump 'left'",
                sentence(List.of(), List.of(high), 0.021));
    }

    @Test
    void tellsAPumpThatIsOffOrFarAway() {
        Pump off = MadeUpTank.pump("left", new Vec3(0.04, 0.25, 0.2), 0, 0, 0);
        assertTrue(sentence(List.of(), List.of(off), 0.01).endsWith("no circulation pump is running"));
        assertTrue(sentence(List.of(), List.of(LEFT), 0.01).endsWith("pump 'left' reaches it only after 56 cm"));
    }

    @Test
    void tellsTheJetThatIsTooStrong() {
        assertEquals("60.0 cm/s: more than the 35 cm/s that it is kept in; it stands in the jet of pump 'left', 56 cm"
                + " away", sentence(List.of(), List.of(LEFT), 0.6));
    }

    @Test
    void theTankIsAsGoodAsItsWorstCoral() {
        Coral other = MadeUpTank.coral("other", CoralGroup.SOFT, new Vec3(0.6, 0.25, 0.3), 0.1);
        Scenario scenario = scenario(List.of(), List.of(LEFT), List.of(PLATE, other));
        Assessment assessment = Assessor.assess(scenario, uniform(0.1f),
                List.of(MadeUpTank.series("plate", 0.02, 0.001), MadeUpTank.series("other", 0.1, 0.001)),
                MadeUpTank.SETTLED);
        assertEquals(Verdict.FAIL, assessment.verdict());
        assertTrue(assessment.summary().startsWith("1 of 2 corals stands in water that does not suit it: plate."),
                assessment.summary());
        assertTrue(assessment.summary().endsWith("No water is likely to stand still."), assessment.summary());
    }

    /** All speeds 20 % lower on the companion: a typical deviation of 1.4826 x 20 %, and 1.96 of it in the range. */
    @Test
    void aRangeHoldsAlmostTwiceTheCellsDeviation() {
        Evidence evidence = new Evidence(Optional.of(uniform(MadeUpTank.grid(0.04), 0.08f)), "", 0.1);
        CoralReading plate = Assessor.assess(scenario(List.of(), List.of(LEFT), List.of(PLATE)), uniform(0.1f),
                List.of(MadeUpTank.series("plate", 0.1, 0)), MadeUpTank.SETTLED, evidence).corals().get(0);
        double cells = 1.959964 * 1.4826 * 0.2 * 0.1;
        assertEquals(cells, plate.doubt().gridMPerS().orElseThrow(), 1e-6);
        assertEquals(0.1 - Math.hypot(cells, 0.01), plate.interval().lowMPerS(), 1e-6);
        assertEquals(0.1 + Math.hypot(cells, 0.01), plate.interval().highMPerS(), 1e-6);
        double share = Assessor.speedDoubts(scenario(List.of(), List.of(LEFT), List.of(PLATE)), uniform(0.1f),
                List.of(MadeUpTank.series("plate", 0.1, 0)), evidence).get(0);
        assertEquals(Math.hypot(cells, 0.01) / 0.1, share, 1e-5, "what the clearing is tried with");
    }

    @Test
    void withoutCoralsThereIsNoVerdict() {
        Assessment assessment = Assessor.assess(scenario(List.of(), List.of(LEFT), List.of()), uniform(0.01f),
                List.of(), MadeUpTank.SETTLED);
        assertEquals(Verdict.NONE, assessment.verdict());
        assertTrue(assessment.summary().startsWith("No corals to judge. Likely still: 100 % of the water"),
                assessment.summary());
    }

    @Test
    void anUnsettledRunNeverPasses() {
        Assessment assessment = assess(List.of(), List.of(LEFT), 0.1, MadeUpTank.UNSETTLED);
        assertEquals(Verdict.MARGINAL, assessment.verdict());
        assertTrue(assessment.summary().contains("not settled"), assessment.summary());
        assertTrue(assessment.corals().get(0).sentence().contains("not settled"));
    }

    @Test
    void aMirroredTankMirrorsItsFindings() {
        Scenario scenario = MadeUpTank.scenario();
        FlowStatistics flow = MadeUpTank.flow(scenario, 0.02);
        Grid grid = flow.grid();
        float[][] mirrored = new float[3][grid.cells()];
        boolean[] fluid = new boolean[grid.cells()];
        for (int cell = 0; cell < grid.cells(); cell++) {
            int from = cell - 2 * (cell % grid.nx()) + grid.nx() - 1;
            fluid[cell] = flow.fluid()[from];
            mirrored[0][cell] = flow.meanSpeed()[from];
            mirrored[1][cell] = flow.rmsSpeed()[from];
            mirrored[2][cell] = flow.standardErrorSpeed()[from];
        }
        float[] none = new float[grid.cells()];
        Assessment one = Assessor.assess(MadeUpTank.with(scenario, List.of()), flow, List.of(), MadeUpTank.SETTLED);
        Assessment two = Assessor.assess(MadeUpTank.with(scenario, List.of()), new FlowStatistics(grid, fluid, none,
                none, none, mirrored[0], mirrored[1], mirrored[2], none, none), List.of(), MadeUpTank.SETTLED);
        assertEquals(one.histogram(), two.histogram());
        assertEquals(one.stillWater().volumeM3(), two.stillWater().volumeM3(), 1e-12);
        assertEquals(one.stillWater().regions().size(), two.stillWater().regions().size());
        assertEquals(1.2 - one.stillWater().regions().get(0).centreM().x(),
                two.stillWater().regions().get(0).centreM().x(), 1e-6);
        assertEquals(one.surface().meanMPerS(), two.surface().meanMPerS(), 1e-6);
        assertEquals(one.sandBed().orElseThrow().gustMPerS(), two.sandBed().orElseThrow().gustMPerS(), 1e-9);
    }

    @Test
    void warnsBeforeTheSandMoves() {
        Scenario scenario = scenario(List.of(), List.of(LEFT), List.of());
        double threshold = SandThreshold.ofAragonite(0.0008).speedMPerS(0.05);
        assertTrue(sand(scenario, 0.85 * threshold).isWarning());
        assertFalse(sand(scenario, 0.75 * threshold).isWarning());
        assertTrue(sand(scenario, 0.75 * threshold).sentence().startsWith("The sand stays put"));
        assertTrue(sand(scenario, 0.85 * threshold).sentence().startsWith("The sand may drift"));
        assertTrue(sand(scenario, 1.05 * threshold).sentence().startsWith("The sand will drift"));
        assertTrue(sand(scenario, 1.05 * threshold).sentence().contains("'left'"), "and by which pump");
        assertFalse(sand(scenario, 0.75 * threshold).sentence().contains("pump"));
    }

    /** The drag of gusts on one spot of the sand moves it, though the water 5 cm above is slow. */
    @Test
    void warnsOfTheDragOnTheSandToo() {
        Scenario scenario = scenario(List.of(), List.of(LEFT), List.of());
        double critical = SandThreshold.ofAragonite(0.0008).shearStressPa();
        FlowStatistics slow = uniform(0.05f);
        boolean[] fluid = slow.fluid();
        Grid grid = slow.grid();
        Arrays.fill(fluid, 0, 2 * grid.nx() * grid.ny(), false);
        slow.gustWallShear()[grid.index(50, 3, 2)] = (float) (1.2 * critical);
        SandBed sand = new SandBedSurvey(scenario, slow).read().orElseThrow();
        assertTrue(sand.isWarning());
        assertTrue(sand.sentence().startsWith("The sand will drift: gusts drag at it with "
                + Figures.decimal(1.2 * critical, 2) + " Pa at the front right"), sand.sentence());
        assertEquals(1.0 / (grid.nx() * grid.ny()), sand.shear().blownShareFraction(), 1e-9);
    }

    @Test
    void countsTurnoverAndTheShareOfEachSpeed() {
        Assessment assessment = assess(List.of(), List.of(LEFT), 0.1, MadeUpTank.SETTLED);
        // 8000 l/h over 120 x 50 x 48 cm
        assertEquals(8000 / 288.0, assessment.turnover().pumpsPerHour(), 1e-9);
        assertEquals(0.288, assessment.waterVolumeM3(), 1e-9);
        assertEquals(1, assessment.histogram().bins().stream()
                .mapToDouble(SpeedHistogram.Bin::shareFraction).sum(), 1e-12);
        assertEquals(0.1, assessment.surface().meanMPerS(), 1e-6);
    }

    @Test
    void refusesSeriesOfOtherCorals() {
        Scenario scenario = scenario(List.of(), List.of(LEFT), List.of(PLATE));
        for (List<ProbeSeries> wrong : List.of(List.<ProbeSeries>of(),
                List.of(MadeUpTank.series("another", 0.1, 0.01)))) {
            assertThrows(IllegalArgumentException.class,
                    () -> Assessor.assess(scenario, uniform(0.1f), wrong, MadeUpTank.SETTLED));
        }
    }

    private static Verdict verdict(double mean, double margin, SpeedRange range, boolean settled) {
        return CoralJudge.verdict(Interval.about(mean, new Doubt(margin, OptionalDouble.empty(), 0)), range, settled);
    }

    private static SandBed sand(Scenario scenario, double speed) {
        // layer 9 of 1 cm cells above 4.5 cm of sand has its middle 5 cm above the sand
        Grid grid = MadeUpTank.grid(0.01);
        Scenario deeper = new Scenario("sand", new Tank(scenario.tank().insideM(), 0.48, 0.045,
                0.0008), List.of(), scenario.pumps(), Optional.empty(), Optional.empty(), List.of());
        return new SandBedSurvey(deeper, uniform(grid, (float) speed)).read().orElseThrow();
    }

    private static String sentence(List<Rock> rocks, List<Pump> pumps, double speed) {
        return assess(rocks, pumps, speed, MadeUpTank.SETTLED).corals().get(0).sentence();
    }

    private static Assessment assess(List<Rock> rocks, List<Pump> pumps, double speed, RunQuality quality) {
        return Assessor.assess(scenario(rocks, pumps, List.of(PLATE)), uniform(0.1f),
                List.of(MadeUpTank.series("plate", speed, 0.0001)), quality);
    }

    private static Scenario scenario(List<Rock> rocks, List<Pump> pumps, List<Coral> corals) {
        return new Scenario("made up", MadeUpTank.TANK, rocks, pumps, Optional.empty(), Optional.empty(), corals);
    }

    private static FlowStatistics uniform(float speed) {
        return uniform(MadeUpTank.grid(0.02), speed);
    }

    private static FlowStatistics uniform(Grid grid, float speed) {
        boolean[] fluid = new boolean[grid.cells()];
        Arrays.fill(fluid, true);
        float[] speeds = new float[grid.cells()];
        Arrays.fill(speeds, speed);
        float[] none = new float[grid.cells()];
        return new FlowStatistics(grid, fluid, speeds, none, none, speeds, speeds, none, none, none);
    }
}
