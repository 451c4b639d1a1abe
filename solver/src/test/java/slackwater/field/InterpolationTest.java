package slackwater.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.geometry.Vec3;

class InterpolationTest {
    private final Grid grid = new Grid(6, 5, 4, 0.02);
    private final boolean[] fluid = new boolean[grid.cells()];
    private final float[] values = new float[grid.cells()];

    InterpolationTest() {
        Arrays.fill(fluid, true);
        for (int cell = 0; cell < values.length; cell++) {
            values[cell] = (float) linear(grid.centreM(cell));
        }
    }

    private static double linear(Vec3 at) {
        return 0.1 + 2 * at.x() - at.y() + 0.5 * at.z();
    }

    @Test
    void keepsALinearFieldBetweenTheCentres() {
        ForAll.seeds(100, random -> {
            Vec3 at = new Vec3(0.01 + 0.10 * random.nextDouble(), 0.01 + 0.08 * random.nextDouble(),
                    0.01 + 0.06 * random.nextDouble());
            assertEquals(linear(at), new Interpolation(grid, fluid, values).at(at).orElseThrow(), 1e-6);
        });
    }

    @Test
    void takesTheNearestCentreOutside() {
        assertEquals(values[0], new Interpolation(grid, fluid, values).at(new Vec3(-1, 0, 0)).orElseThrow(), 1e-6);
    }

    @Test
    void rockSlowsNothingDown() {
        Arrays.fill(values, 0.3f);
        for (int cell = 0; cell < values.length; cell += 2) {
            fluid[cell] = false;
            values[cell] = 0;
        }
        ForAll.seeds(100, random -> {
            Vec3 at = new Vec3(0.12 * random.nextDouble(), 0.1 * random.nextDouble(), 0.08 * random.nextDouble());
            new Interpolation(grid, fluid, values).at(at).ifPresent(value -> assertEquals(0.3, value, 1e-6));
        });
        Arrays.fill(fluid, false);
        assertTrue(new Interpolation(grid, fluid, values).at(new Vec3(0.05, 0.05, 0.05)).isEmpty());
    }

    @Test
    void aPlaceIsInTheCellWhoseCentreIsNearest() {
        for (int cell = 0; cell < grid.cells(); cell++) {
            assertEquals(cell, grid.indexAt(grid.centreM(cell)));
        }
        assertEquals(grid.cells() - 1, grid.indexAt(new Vec3(9, 9, 9)));
        assertEquals(0, grid.indexAt(new Vec3(-9, -9, -9)));
    }
}
