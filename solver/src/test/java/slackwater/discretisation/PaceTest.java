package slackwater.discretisation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Box;
import slackwater.geometry.Vec3;
import slackwater.lattice.MassSource;
import slackwater.scenario.Outlet;
import slackwater.scenario.Overflow;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Return;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;
import slackwater.scenario.Wall;

/** The step against what is left of the sources on the grid. Source: momentum theory and continuity, by hand. */
class PaceTest {
    /** docs/numerics.md, "Step". */
    private static final double CELLS_A_STEP = 0.15;
    private static final double CELL_M = 0.01;
    private static final Tank TANK = new Tank(new Vec3(0.4, 0.2, 0.2), 0.2, 0, 0.001);

    private static Pump pump(Outlet outlet, double x, double y) {
        return new Pump("pump", 1e-3, outlet, new Vec3(x, y, 0.1), 0, 0, 0, 1, 0, 1, Pattern.STEADY);
    }

    private static Discretisation made(List<Rock> rocks, List<Pump> pumps, Optional<Return> line, double weirM) {
        Scenario scenario = new Scenario("pace", TANK, rocks, pumps, line,
                line.map(l -> new Overflow(Wall.RIGHT, 0.1, 0.1 + weirM)), List.of());
        return Discretiser.discretise(scenario, Voxels.of(TANK, rocks, CELL_M), 1);
    }

    /** The speed that the fastest source has, by the length of the step. */
    private static double speedMPerS(List<Pump> pumps) {
        return CELLS_A_STEP * CELL_M / made(List.of(), pumps, Optional.empty(), 0).plan().timeStepS();
    }

    /** A nozzle sends out Q/A whatever its place: 1 L/s through 40 mm. */
    @Test
    void aWholeDiscGoesByItself() {
        double jet = 1e-3 / (Math.PI / 4 * 0.04 * 0.04);
        assertEquals(jet, speedMPerS(List.of(pump(new Outlet.Round(0.04), 0.1, 0.1))), 0.03 * jet);
    }

    /** A slot 40 cm wide in a tank 20 cm deep: half of it pushes with all the thrust, sqrt(2) times as fast. */
    @Test
    void halfADiscGoesFaster() {
        double jet = 1e-3 / (0.4 * 0.03);
        double disc = 0.4 * Math.sqrt(2);
        assertEquals(jet * Math.sqrt(disc / 0.2), speedMPerS(List.of(pump(new Outlet.Slot(0.4, 0.03), 0.1, 0.1))),
                0.1 * jet);
    }

    @Test
    void discsInOnePlaceAddInSquares() {
        Outlet narrow = new Outlet.Round(0.004);
        double one = speedMPerS(List.of(pump(narrow, 0.1, 0.1)));
        double two = speedMPerS(List.of(pump(narrow, 0.1, 0.1), pump(narrow, 0.105, 0.1)));
        assertEquals(Math.sqrt(2) * one, two, 0.05 * one);
    }

    private static Return line() {
        return new Return(1e-3, 0.1, new Vec3(0.1, 0.1, 0.1), 0, 0);
    }

    /** A weir of one cell's width is 2 x 1 x 2 cells with 2 faces to the left, 4 on its sides and 2 below. */
    @Test
    void aShortWeirDraws() {
        double step = made(List.of(), List.of(), Optional.of(line()), 0.01).plan().timeStepS();
        double speed = 1e-3 / (12 * CELL_M * CELL_M);
        assertEquals(speed, CELLS_A_STEP * CELL_M / step, 0.01 * speed);
    }

    @Test
    void aWallBetweenReturnAndOverflowIsRefused() {
        Rock wall = new Rock("wall", new Box(new Vec3(0.2, -1, -1), new Vec3(0.22, 1, 1)));
        UnfitGrid told = assertThrows(UnfitGrid.class,
                () -> made(List.of(wall), List.of(), Optional.of(line()), 0.1));
        assertTrue(told.getMessage().contains("no way for the water"), told.getMessage());
    }

    /** Behind a thin wall beside the nozzle lies shut-in water: nothing is poured into it. */
    @Test
    void nothingEntersShutInWater() {
        Rock wall = new Rock("wall", new Box(new Vec3(-1, 0.061, -1), new Vec3(1, 0.079, 1)));
        Discretisation made = made(List.of(wall), List.of(), Optional.of(line()), 0.1);
        MassSource nozzle = made.problem().massSources().get(0);
        double sum = 0;
        for (int n = 0; n < nozzle.cells().length; n++) {
            assertTrue(nozzle.cells()[n] / made.voxels().grid().nx() % made.voxels().grid().ny() > 7);
            sum += nozzle.weights()[n];
        }
        assertEquals(1, sum, 1e-6);
    }
}
