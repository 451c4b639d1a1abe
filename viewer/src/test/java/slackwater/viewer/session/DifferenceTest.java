package slackwater.viewer.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;

/** Fields that are straight lines in space are read exactly between cells, so their difference is exact too. */
class DifferenceTest {
    private static final int WALL = 5;

    @Test
    void onOneGridItIsTheDifference() {
        Grid grid = new Grid(6, 5, 4, 0.1);
        Difference.Field field = Difference.Field.of(linear(grid, 1), linear(grid, 1.5));
        for (int cell = 0; cell < grid.cells(); cell++) {
            boolean wall = cell == WALL;
            assertEquals(!wall, field.both()[cell]);
            assertEquals(wall ? 0 : 0.5 * grid.centreM(cell).x(), field.fasterMPerS()[cell], 1e-6);
        }
    }

    @Test
    void anotherGridIsReadBetweenItsCells() {
        Grid fine = new Grid(12, 10, 8, 0.05);
        Grid coarse = new Grid(6, 5, 4, 0.1);
        Difference.Field field = Difference.Field.of(linear(fine, 2), linear(coarse, 1));
        for (int cell = 0; cell < fine.cells(); cell++) {
            double x = fine.centreM(cell).x();
            if (field.both()[cell] && x > 0.2 && x < 0.45) {
                assertEquals(-x, field.fasterMPerS()[cell], 1e-6);
            }
        }
        assertFalse(field.both()[WALL]);
        assertTrue(field.both()[WALL + 1]);
    }

    @Test
    void coloursEndAtARoundChange() {
        Grid grid = new Grid(6, 5, 4, 0.1);
        assertEquals(0.1, Difference.Field.of(linear(grid, 1), linear(grid, 1.15)).endMPerS());
        assertEquals(0.02, Difference.Field.of(linear(grid, 1), linear(grid, 1)).endMPerS());
        assertEquals(1, Difference.Field.of(linear(grid, 0), linear(grid, 100)).endMPerS());
    }

    /** Nine tenths of the cells are rock, where nothing changes: they are not water that changes little. */
    @Test
    void rockHasNoPartInWhereColoursEnd() {
        Grid grid = new Grid(10, 10, 10, 0.1);
        boolean[] fluid = new boolean[grid.cells()];
        Arrays.fill(fluid, 0, grid.cells() / 10, true);
        assertEquals(1, Difference.Field.of(linear(grid, 0, fluid), linear(grid, 0.6, fluid)).endMPerS());
        Arrays.fill(fluid, false);
        assertEquals(0.02, Difference.Field.of(linear(grid, 0, fluid), linear(grid, 1, fluid)).endMPerS());
    }

    /** Speed = slope times x; one cell is rock. */
    private static FlowStatistics linear(Grid grid, double slope) {
        boolean[] fluid = new boolean[grid.cells()];
        Arrays.fill(fluid, true);
        fluid[WALL] = false;
        return linear(grid, slope, fluid);
    }

    private static FlowStatistics linear(Grid grid, double slope, boolean[] fluid) {
        float[] speed = new float[grid.cells()];
        for (int cell = 0; cell < speed.length; cell++) {
            speed[cell] = fluid[cell] ? (float) (slope * grid.centreM(cell).x()) : 0;
        }
        float[] none = new float[grid.cells()];
        return new FlowStatistics(grid, fluid, speed, none, none, speed, speed, none, none, none);
    }
}
