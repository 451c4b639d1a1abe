package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Bounds;
import slackwater.geometry.Box;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/** On a field made by hand: still boxes in moving water, so that every volume is known. */
class StillWaterTest {
    private static final double CELL_M = 0.02;
    private final Grid grid = MadeUpTank.grid(CELL_M);
    private final boolean[] fluid = new boolean[grid.cells()];
    private final float[] mean = new float[grid.cells()];
    private final float[] rms = new float[grid.cells()];
    private final float[] error = new float[grid.cells()];

    StillWaterTest() {
        Arrays.fill(fluid, true);
        Arrays.fill(mean, 0.10f);
        Arrays.fill(rms, 0.10f);
    }

    @Test
    void measuresEachRegionTheLargestFirst() {
        fill(new Bounds(new Vec3(0, 0.40, 0.04), new Vec3(0.20, 0.50, 0.14)), 0.01f);
        fill(new Bounds(new Vec3(1.00, 0, 0.38), new Vec3(1.20, 0.10, 0.48)), 0.015f);
        fill(new Bounds(new Vec3(0.60, 0.20, 0.20), new Vec3(0.62, 0.22, 0.28)), 0.01f);
        fill(new Bounds(new Vec3(0.20, 0.40, 0.04), new Vec3(0.30, 0.50, 0.14)), 0.01f);
        StillWater still = find(List.of());
        assertEquals(List.of("low at the back left", "near the surface at the front right"),
                still.regions().stream().map(StillRegion::place).toList());
        assertEquals(3e-3, still.regions().get(0).volumeM3(), 1e-9);
        assertEquals(2e-3, still.regions().get(1).volumeM3(), 1e-9);
        assertEquals(0.015, still.regions().get(1).meanMPerS(), 1e-6);
        assertEquals(1, still.pockets());
        assertEquals(4 * grid.cellVolumeM3(), still.scatteredM3(), 1e-12);
        assertEquals(5e-3 + 4 * grid.cellVolumeM3(), still.volumeM3(), 1e-9);
        assertEquals(still.volumeM3() / (fluid.length * grid.cellVolumeM3()), still.shareFraction(), 1e-9);
    }

    @Test
    void cellsThatTouchOnlyAtAnEdgeAreApart() {
        fill(new Bounds(new Vec3(0.20, 0.20, 0.20), new Vec3(0.30, 0.30, 0.30)), 0.01f);
        fill(new Bounds(new Vec3(0.30, 0.30, 0.20), new Vec3(0.40, 0.40, 0.30)), 0.01f);
        assertEquals(2, find(List.of()).regions().size());
    }

    @Test
    void gustsKeepSlowWaterFromBeingStill() {
        Bounds box = new Bounds(new Vec3(0, 0, 0.1), new Vec3(0.2, 0.2, 0.2));
        fill(box, 0.019f);
        assertEquals(1, find(List.of()).regions().size());
        // deviation 0.02: gusts of 0.019 + 1.645 x 0.02 = 0.0519
        eachIn(box, cell -> rms[cell] = (float) Math.hypot(0.019, 0.02));
        assertEquals(0, find(List.of()).volumeM3());
    }

    @Test
    void carriesItsDoubt() {
        Bounds sure = new Bounds(new Vec3(0, 0, 0.1), new Vec3(0.2, 0.2, 0.2));
        Bounds maybe = new Bounds(new Vec3(0.4, 0, 0.1), new Vec3(0.6, 0.2, 0.2));
        Bounds hardly = new Bounds(new Vec3(0.8, 0, 0.1), new Vec3(1.0, 0.2, 0.2));
        fill(sure, 0.010f);
        fill(maybe, 0.018f);
        fill(hardly, 0.022f);
        Arrays.fill(error, 0.002f);
        StillWater still = find(List.of());
        assertEquals(4e-3, still.surelyM3(), 1e-9);
        assertEquals(8e-3, still.volumeM3(), 1e-9);
        assertEquals(12e-3, still.possiblyM3(), 1e-9);
    }

    @Test
    void namesTheRockThatTheWaterHidesBehind() {
        Box box = new Box(new Vec3(0.80, 0.20, 0), new Vec3(1.00, 0.34, 0.30));
        fill(new Bounds(new Vec3(0.82, 0.34, 0.04), new Vec3(0.98, 0.44, 0.14)), 0.01f);
        assertEquals("low at the back right, behind the right mound",
                find(List.of(new Rock("right mound", box))).regions().get(0).place());
    }

    @Test
    void rockIsNoStillWater() {
        Arrays.fill(fluid, false);
        Arrays.fill(mean, 0);
        Arrays.fill(rms, 0);
        StillWater still = find(List.of());
        assertEquals(0, still.volumeM3());
        assertTrue(still.regions().isEmpty());
    }

    private StillWater find(List<Rock> rocks) {
        float[] none = new float[grid.cells()];
        Scenario scenario = new Scenario("boxes", MadeUpTank.TANK, rocks, List.of(), Optional.empty(),
                Optional.empty(), List.of());
        FlowStatistics flow = new FlowStatistics(grid, fluid, none, none, none, mean, rms, error, none,
                none);
        return new StillWaterSearch(flow, new Stillness(flow).probability(none, 0), new Places(scenario)).find();
    }

    private void fill(Bounds box, float speed) {
        eachIn(box, cell -> {
            mean[cell] = speed;
            rms[cell] = speed;
        });
    }

    private void eachIn(Bounds box, IntConsumer action) {
        for (int cell = 0; cell < grid.cells(); cell++) {
            if (box.contains(MadeUpTank.centre(grid, cell))) {
                action.accept(cell);
            }
        }
    }
}
