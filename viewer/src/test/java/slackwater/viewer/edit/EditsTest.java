package slackwater.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.geometry.Bounds;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Mesh;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Pattern;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFile;
import slackwater.units.Unit;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.camera.Ray;
import slackwater.viewer.camera.View;
import slackwater.viewer.edit.Thing.Kind;

class EditsTest {
    private static final Thing PUMP = new Thing(Kind.PUMP, 0);
    private static final Scenario TERRACE = Tanks.terrace();

    @Test
    void placesStayWithinTheGlass() {
        Scenario moved = Edits.moved(TERRACE, PUMP, new Vec3(9, -9, 9));
        assertEquals(new Vec3(1.19, 0.01, 0.47), moved.pumps().get(0).atM());
        assertEquals(TERRACE.pumps().get(1), moved.pumps().get(1));
        assertEquals(new Vec3(0, 0, 0.04), Edits.moved(TERRACE, new Thing(Kind.CORAL, 2), new Vec3(-1, -1, -1))
                .corals().get(2).atM());
    }

    @Test
    void anAimGoesRoundAndOutputStaysWithinItsLimits() {
        assertEquals(Math.toRadians(350), Edits.aimed(TERRACE, PUMP, Math.toRadians(-10), 0).pumps().get(0).yawRad(),
                1e-12);
        assertEquals(Math.PI / 2, Edits.aimed(TERRACE, PUMP, 1, 9).pumps().get(0).pitchRad());
        assertEquals(0, Edits.output(TERRACE, 0, -1).pumps().get(0).outputFraction());
        assertEquals(1, Edits.output(TERRACE, 0, 2).pumps().get(0).outputFraction());
        Thing line = new Thing(Kind.RETURN, 0);
        assertEquals(1, Edits.aimed(TERRACE, line, 1, 0.2).returnLine().orElseThrow().yawRad());
        assertSame(TERRACE, Edits.without(TERRACE, line));
    }

    @Test
    void patternsGoRound() {
        Pattern pattern = Pattern.STEADY;
        for (int n = 0; n < Pattern.Kind.values().length; n++) {
            pattern = Edits.nextPattern(pattern);
            Scenario changed = Edits.pattern(TERRACE, 0, pattern);
            assertEquals(Optional.empty(), Soundness.fault(changed, Tanks.FOLDER));
        }
        assertEquals(Pattern.STEADY, pattern);
    }

    @Test
    void thingsComeAndGo() {
        Coral coral = new Coral(Edits.freeName("new coral", List.of("new coral")), CoralGroup.SOFT,
                new Vec3(0.5, 0.1, 0.05), new Vec3(0, 0, 1), 0.1, Optional.empty());
        assertEquals("new coral 2", coral.name());
        Scenario more = Edits.with(TERRACE, coral);
        assertEquals(7, more.corals().size());
        assertEquals(TERRACE, Edits.without(more, new Thing(Kind.CORAL, 6)));
        assertEquals(1, Edits.without(TERRACE, PUMP).pumps().size());
        assertEquals(12, Thing.all(TERRACE).size());
        assertTrue(!new Thing(Kind.CORAL, 6).in(TERRACE) && new Thing(Kind.CORAL, 6).in(more));
    }

    @Test
    void rocksMoveAndGrowOnTheirBase() {
        Thing mound = new Thing(Kind.ROCK, 0);
        Scenario moved = Edits.moved(TERRACE, mound, mound.atM(TERRACE).plus(new Vec3(0.1, 0.05, 0)));
        Ellipsoid was = (Ellipsoid) TERRACE.rocks().get(0).solid();
        assertEquals(was.centre().plus(new Vec3(0.1, 0.05, 0)), ((Ellipsoid) moved.rocks().get(0).solid()).centre());
        Scenario grown = Edits.resized(TERRACE, mound, 1.2);
        assertEquals(mound.atM(TERRACE).z(), mound.atM(grown).z(), 1e-12);
        assertEquals(was.radii().z() * 1.2, ((Ellipsoid) grown.rocks().get(0).solid()).radii().z(), 1e-12);
        assertEquals(0.092, Edits.resized(TERRACE, new Thing(Kind.CORAL, 1), 1.15).corals().get(1).sizeM(), 1e-9);
    }

    @Test
    void aScannedRockMovesWithItsFile() throws Exception {
        ScenarioFile file = ScenarioFile.open(Tanks.FOLDER.resolve("scanned-rock-90.toml"));
        int number = 0;
        while (!(file.scenario().rocks().get(number).solid() instanceof Mesh)) {
            number++;
        }
        Thing rock = new Thing(Kind.ROCK, number);
        Scenario moved = Edits.moved(file.scenario(), rock, rock.atM(file.scenario()).plus(new Vec3(0.01, 0, 0)));
        Mesh was = (Mesh) file.scenario().rocks().get(number).solid();
        Mesh now = (Mesh) file.with(moved).scenario().rocks().get(number).solid();
        assertEquals(was.bounds().low().x() + 0.01, now.bounds().low().x(), 1e-6);
        assertEquals(was.volumeM3(), now.volumeM3(), 1e-9);
        assertEquals(now.bounds().low().x(), moved.rocks().get(number).solid().bounds().low().x(), 1e-9);
    }

    /** In the front view a pump follows the pointer in x and z, on round centimetres; y stays to the last digit. */
    @Test
    void aPumpFollowsThePointerAlongThePane() {
        Camera camera = View.FRONT.on(new Bounds(Vec3.ZERO, TERRACE.tank().insideM()), FRAME,
                Margins.NONE);
        Vec3 at = PUMP.atM(TERRACE);
        Drag drag = Drag.of(TERRACE, PUMP, Drag.Grip.BODY, ray(camera, at), Drag.Way.BY_ITSELF);
        Vec3 to = new Vec3(0.1, at.y(), 0.30);
        Scenario moved = drag.at(ray(camera, to), Steps.METRIC);
        assertEquals(to.x(), moved.pumps().get(0).atM().x(), 1e-9);
        assertEquals(at.y(), moved.pumps().get(0).atM().y());
        assertEquals(to.z(), moved.pumps().get(0).atM().z(), 1e-9);
        assertSame(TERRACE, drag.at(ray(camera, at), Steps.METRIC));
    }

    /** From the corner, a pump at the left pane slides along that pane: x stays. */
    @Test
    void fromTheCornerItSlidesOnItsPane() {
        Camera camera = View.CORNER.on(new Bounds(Vec3.ZERO, TERRACE.tank().insideM()), FRAME,
                Margins.NONE);
        Vec3 at = PUMP.atM(TERRACE);
        Drag drag = Drag.of(TERRACE, PUMP, Drag.Grip.BODY, ray(camera, at), Drag.Way.BY_ITSELF);
        Vec3 to = new Vec3(at.x(), 0.3, 0.2);
        Vec3 found = drag.at(ray(camera, to), Steps.METRIC).pumps().get(0).atM();
        assertEquals(at.x(), found.x());
        assertEquals(0, found.minus(to).length(), 1e-6);
        Vec3 inches = drag.at(ray(camera, to), Steps.US).pumps().get(0).atM();
        assertEquals(Math.rint(inches.y() / 0.0254 * 4), inches.y() / 0.0254 * 4, 1e-9);
    }

    /** The handle pulled to where another aim has it gives that aim, from every side. */
    @Test
    void theHandleTurnsTheAim() {
        for (View view : List.of(View.FRONT, View.TOP, View.CORNER)) {
            Camera camera = view.on(new Bounds(Vec3.ZERO, TERRACE.tank().insideM()), FRAME,
                    Margins.NONE);
            Scenario start = view == View.TOP ? Edits.aimed(TERRACE, PUMP, Unit.DEGREE.toSi(10), 0) : TERRACE;
            Scenario wished = Edits.aimed(start, PUMP, Unit.DEGREE.toSi(view == View.TOP ? 60 : 0),
                    Unit.DEGREE.toSi(view == View.TOP ? 0 : -30));
            Drag drag = Drag.of(start, PUMP, Drag.Grip.AIM, ray(camera, Drag.handleM(start, PUMP)),
                    Drag.Way.BY_ITSELF);
            Scenario turned = drag.at(ray(camera, Drag.handleM(wished, PUMP)), Steps.METRIC);
            assertEquals(0, turned.pumps().get(0).aim().minus(wished.pumps().get(0).aim()).length(), 0.03, "" + view);
        }
    }

    @Test
    void faultsCallThingsByTheirNames() {
        Scenario into = Edits.moved(TERRACE, PUMP, new Vec3(0.35, 0.28, 0.1));
        String fault = Soundness.fault(into, Tanks.FOLDER).orElseThrow();
        assertTrue(fault.startsWith("pump \"left\" found [35, 28, 10] cm inside"), fault);
        assertEquals(Optional.empty(), Soundness.unfit(TERRACE, 0.02));
    }

    @Test
    void stepsAreRound() {
        assertEquals(new Vec3(Unit.CM.toSi(36.5), 0, Unit.CM.toSi(-1)),
                Steps.METRIC.place(new Vec3(0.3661, 0.001, -0.0099)));
        assertEquals(Unit.DEGREE.toSi(11), Steps.METRIC.angle(Math.toRadians(11.3)));
    }

    private static final Frame FRAME = new Frame(1200, 800, 1);

    private static Ray ray(Camera camera, Vec3 throughM) {
        Camera.Spot spot = camera.spot(throughM, FRAME);
        return camera.ray(spot.xPx(), spot.yPx(), FRAME);
    }
}
