package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.geometry.Bounds;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.Wall;

/** Each rule by a layout that breaks it alone. */
class RulesTest {
    private static final Coral FAR = Tanks.coral("far", CoralGroup.SOFT, 0.9, 0.1, 0.05);

    private static Pump at(double x, double y, double z, double yawDeg) {
        return new Pump("p", 4000 / 3.6e6, new Outlet.Round(0.045), new Vec3(x, y, z), Math.toRadians(yawDeg), 0, 0, 1,
                0, 1, Pattern.STEADY);
    }

    private static List<String> told(Scenario scenario, Wishes wishes) {
        List<Piece> pieces = scenario.pumps().stream().map(Piece::of).toList();
        return new Rules(wishes).breaches(scenario, pieces).stream().map(Rules.Breach::says).toList();
    }

    private static void assertOnly(String words, Pump pump) {
        assertOnly(words, Tanks.with(List.of(pump), List.of(FAR)), Wishes.NONE);
    }

    private static void assertOnly(String words, Scenario scenario, Wishes wishes) {
        List<String> told = told(scenario, wishes);
        assertTrue(told.size() == 1 && told.get(0).contains(words), "expected only '" + words + "', found " + told);
    }

    @Test
    void aPlainLayoutIsAllowed() {
        assertEquals(List.of(), told(Tanks.with(List.of(at(0.04, 0.25, 0.35, 0)), List.of(FAR)), Wishes.NONE));
    }

    @Test
    void panesToLookThroughStayFree() {
        assertOnly("front pane, which is to stay free", at(0.5, 0.04, 0.35, 90));
    }

    @Test
    void distancesToGlassSandAndSurfaceAreKept() {
        assertOnly("too close to the back pane", at(0.04, 0.455, 0.35, 0));
        assertOnly("too close to the sand", at(0.04, 0.25, 0.10, 0));
        assertOnly("draw air", at(0.04, 0.25, 0.42, 0));
        assertOnly("blows into glass", at(0.04, 0.25, 0.35, 180));
    }

    @Test
    void intakesAreFreeOfRock() {
        Scenario bare = Tanks.with(List.of(at(0.04, 0.25, 0.25, 0)), List.of(FAR));
        Scenario rock = new Scenario("invented", bare.tank(), List.of(new Rock("mound", new Ellipsoid(
                new Vec3(0.02, 0.25, 0.13), new Vec3(0.06, 0.06, 0.08)))), bare.pumps(), Optional.empty(),
                Optional.empty(), bare.corals());
        assertOnly("intake of pump 'p' is too close to rock 'mound'", rock, Wishes.NONE);
    }

    @Test
    void coralsAreNeitherTouchedNorBlasted() {
        assertOnly("blows straight onto coral 'near'", Tanks.with(List.of(at(0.04, 0.25, 0.35, 0)),
                List.of(Tanks.coral("near", CoralGroup.SOFT, 0.235, 0.25, 0.35))), Wishes.NONE);
        assertOnly("too close to coral 'under'", Tanks.with(List.of(at(0.04, 0.25, 0.35, 0)),
                List.of(Tanks.coral("under", CoralGroup.SOFT, 0.06, 0.25, 0.20))), Wishes.NONE);
        assertEquals(List.of(), told(Tanks.with(List.of(at(0.04, 0.25, 0.35, 0)),
                List.of(Tanks.coral("ahead", CoralGroup.SOFT, 0.6, 0.25, 0.35))), Wishes.NONE),
                "from far away a jet may meet a coral");
    }

    @Test
    void spacesStayFreeAndCablesReach() {
        Scenario tank = Tanks.with(List.of(at(0.04, 0.25, 0.35, 0)), List.of(FAR));
        Wishes free = new Wishes(List.of(Wall.LEFT), List.of(new Bounds(Vec3.ZERO, new Vec3(0.1, 0.5, 0.5))),
                Optional.empty(), 1, Wishes.Clearances.USUAL, 0.3, 24);
        assertOnly("in a space to keep free", tank, free);
        // 15 cm up to the rim and 25 cm along the left pane to the back one.
        Wishes longEnough = new Wishes(List.of(Wall.LEFT), List.of(), Optional.of(Wall.BACK), 0.401,
                Wishes.Clearances.USUAL, 0.3, 24);
        assertEquals(List.of(), told(tank, longEnough));
        Wishes tooShort = new Wishes(List.of(Wall.LEFT), List.of(), Optional.of(Wall.BACK), 0.399,
                Wishes.Clearances.USUAL, 0.3, 24);
        assertOnly("does not reach the back pane", tank, tooShort);
    }

    @Test
    void pumpsDoNotHangInEachOther() {
        Scenario two = Tanks.with(List.of(at(0.04, 0.22, 0.35, 0), at(0.04, 0.26, 0.35, 0)), List.of(FAR));
        assertOnly("in the way of", two, Wishes.NONE);
    }
}
