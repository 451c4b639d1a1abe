package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.field.Grid;
import slackwater.field.Probe;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;

class ProbesTest {
    private final Grid grid = MadeUpTank.grid(0.01);
    private final boolean[] water = new boolean[grid.cells()];

    ProbesTest() {
        Arrays.fill(water, true);
    }

    @Test
    void laysADiscOfTheCoralsSizeOffItsFace() {
        Vec3 at = new Vec3(0.6, 0.25, 0.25);
        for (Vec3 facing : List.of(new Vec3(0, 0, 1), new Vec3(1, 0, 0), new Vec3(1, -1, 1).normalised())) {
            List<Vec3> points = only(coral(at, facing, Optional.empty()), water).pointsM();
            assertEquals(19, points.size());
            for (Vec3 point : points) {
                assertEquals(0.015, point.minus(at).dot(facing), 1e-12);
            }
            double widest = points.stream().mapToDouble(point -> point.minus(points.get(0)).length()).max()
                    .orElseThrow();
            assertEquals(0.05, widest, 1e-12);
        }
    }

    @Test
    void watchesTheUsersOwnLimitsBeforeTheGroups() {
        Vec3 at = new Vec3(0.6, 0.25, 0.25);
        Vec3 up = new Vec3(0, 0, 1);
        assertEquals(List.of(0.04, 0.35), only(coral(at, up, Optional.empty()), water).limitsMPerS());
        assertEquals(List.of(0.07, 0.21),
                only(coral(at, up, Optional.of(new SpeedRange(0.07, 0.21, "own"))), water).limitsMPerS());
    }

    @Test
    void keepsOnlyPointsInWaterAndLiftsADrownedDisc() {
        Scenario scenario = MadeUpTank.scenario();
        boolean[] fluid = MadeUpTank.fluid(scenario, grid);
        for (Probe probe : Probes.of(scenario, grid, fluid)) {
            assertTrue(probe.pointsM().size() >= 10, probe.name());
            for (Vec3 point : probe.pointsM()) {
                int cell = grid.index((int) (point.x() * 100), (int) (point.y() * 100), (int) (point.z() * 100));
                assertTrue(fluid[cell]);
            }
        }
        Vec3 up = new Vec3(0, 0, 1);
        List<Vec3> lifted = only(coral(new Vec3(0.35, 0.28, 0.18), up, Optional.empty()), fluid).pointsM();
        assertTrue(lifted.stream().allMatch(point -> point.z() > 0.18 + 0.0151), "lifted out of the rock");
    }

    @Test
    void namesACoralWithNoWaterBeforeIt() {
        Coral buried = coral(new Vec3(0.6, 0.25, 0.25), new Vec3(0, 0, 1), Optional.empty());
        String message = assertThrows(UnfitGrid.class,
                () -> only(buried, new boolean[grid.cells()])).getMessage();
        assertTrue(message.startsWith("coral \"plate\" at [60, 25, 25] cm has no water before it"), message);
    }

    private Probe only(Coral coral, boolean[] fluid) {
        return Probes.of(MadeUpTank.with(MadeUpTank.scenario(), List.of(coral)), grid, fluid).get(0);
    }

    private static Coral coral(Vec3 at, Vec3 facing, Optional<SpeedRange> range) {
        return new Coral("plate", CoralGroup.PLATING, at, facing, 0.1, range);
    }
}
