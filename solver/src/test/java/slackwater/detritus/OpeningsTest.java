package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.field.Grid;

/** Bit by bit against the definition, in rubble that reaches every side of the grid. */
class OpeningsTest {
    private static final int[][] UNITS = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    private static final Grid GRID = new Grid(5, 4, 6, 0.01);

    @Test
    void everyBitSaysWhetherItsFaceIsOpen() {
        ForAll.seeds(5, random -> {
            boolean[] fluid = new boolean[GRID.cells()];
            for (int cell = 0; cell < fluid.length; cell++) {
                fluid[cell] = random.nextInt(4) > 0;
            }
            Openings openings = new Openings(GRID, fluid);
            for (int cell = 0; cell < fluid.length; cell++) {
                for (int bit = 0; bit < 30; bit++) {
                    boolean expected = fluid[cell] && expected(fluid, cell, bit);
                    assertEquals(expected, (openings.of(cell) >> bit & 1) != 0, "cell " + cell + " bit " + bit);
                }
            }
        });
    }

    private static boolean expected(boolean[] fluid, int cell, int bit) {
        int axis = bit / 10;
        int[] at = {cell % 5, cell / 5 % 4, cell / 20};
        at[axis] += bit % 10 / 5;
        boolean isOpen = isOpen(fluid, at, axis);
        int beside = bit % 5;
        if (beside > 0) {
            int side = beside < 3 ? axis == 0 ? 1 : 0 : axis == 2 ? 1 : 2;
            at[side] += beside % 2 == 1 ? 1 : -1;
            isOpen &= isOpen(fluid, at, axis);
        }
        return isOpen;
    }

    private static boolean isOpen(boolean[] fluid, int[] at, int axis) {
        int[] unit = UNITS[axis];
        return isWater(fluid, at[0], at[1], at[2])
                && isWater(fluid, at[0] - unit[0], at[1] - unit[1], at[2] - unit[2]);
    }

    private static boolean isWater(boolean[] fluid, int i, int j, int k) {
        return i >= 0 && j >= 0 && k >= 0 && i < 5 && j < 4 && k < 6 && fluid[GRID.index(i, j, k)];
    }
}
