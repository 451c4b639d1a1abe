package slackwater.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.backend.Spread;
import slackwater.field.Grid;

/**
 * Laws: what flows into each cell balances what flows out and what enters there; nothing goes through walls; and what
 * was changed for that is a gradient, so the velocities are the nearest that balance (Helmholtz 1858: a field without
 * divergence and a gradient add up to any field in one way only).
 */
class ContinuityTest {
    private static final Grid GRID = new Grid(9, 8, 7, 0.02);
    private static final int[] STEP = {1, 9, 72};
    private final boolean[] solid = new boolean[GRID.cells()];
    private final float[] source = new float[GRID.cells()];
    private final float[][] cells = new float[3][GRID.cells()];
    private final float[][] faces = new float[3][GRID.cells()];

    ContinuityTest() {
        Random random = new Random(3);
        for (int cell = 0; cell < solid.length; cell++) {
            solid[cell] = cell / 72 < 3 && random.nextInt(4) == 0;
            for (int axis = 0; axis < 3; axis++) {
                cells[axis][cell] = solid[cell] ? 0 : (float) random.nextGaussian();
            }
        }
        source[GRID.index(2, 2, 5)] = 7;
        source[GRID.index(7, 6, 6)] = -3;
        source[GRID.index(7, 7, 6)] = -4;
    }

    @Test
    void whatFlowsInFlowsOut() {
        double before = imbalance(means());
        new Continuity(GRID, solid, source, Spread.ALONE).balance(cells, faces);
        assertTrue(imbalance(faces) <= 0.0101 * before, imbalance(faces) + " of " + before);
        for (int cell = 0; cell < solid.length; cell++) {
            for (int axis = 0; axis < 3; axis++) {
                assertTrue(isOpen(cell, axis) || faces[axis][cell] == 0, "through a wall at " + cell);
            }
        }
    }

    /** Round any four faces that meet in an edge, between four cells of water, a gradient adds up to nothing. */
    @Test
    void onlyAGradientIsTakenAway() {
        new Continuity(GRID, solid, source, Spread.ALONE).balance(cells, faces);
        float[][] means = means();
        int rounds = 0;
        for (int cell = STEP[2]; cell < solid.length; cell++) {
            int besideX = cell - 1;
            int besideY = cell - STEP[1];
            if (isOpen(cell, 0) && isOpen(cell, 1) && isOpen(besideX, 1) && isOpen(besideY, 0)) {
                double round = taken(means, 0, cell) + taken(means, 1, besideX) - taken(means, 1, cell)
                        - taken(means, 0, besideY);
                assertEquals(0, round, 1e-5);
                rounds++;
            }
        }
        assertTrue(rounds > 200, "edges in water: " + rounds);
    }

    /** The next moment starts from this one's answer and has the same law; still water stays still. */
    @Test
    void everyMomentBalances() {
        Continuity continuity = new Continuity(GRID, solid, source, Spread.ALONE);
        continuity.balance(cells, faces);
        double before = imbalance(means());
        continuity.balance(cells, faces);
        assertTrue(imbalance(faces) <= 0.0101 * before);
        float[][] still = new float[3][GRID.cells()];
        float[][] none = new float[3][GRID.cells()];
        new Continuity(GRID, solid, new float[GRID.cells()], Spread.ALONE).balance(still, none);
        assertTrue(Arrays.stream(none).allMatch(values -> Arrays.equals(values, new float[GRID.cells()])));
    }

    private double taken(float[][] means, int axis, int cell) {
        return means[axis][cell] - faces[axis][cell];
    }

    private boolean isOpen(int cell, int axis) {
        int[] at = {cell % 9, cell / 9 % 8, cell / 72};
        return at[axis] > 0 && !solid[cell] && !solid[cell - STEP[axis]];
    }

    private float[][] means() {
        float[][] means = new float[3][GRID.cells()];
        for (int axis = 0; axis < 3; axis++) {
            for (int cell = 0; cell < solid.length; cell++) {
                means[axis][cell] = isOpen(cell, axis) ? (cells[axis][cell] + cells[axis][cell - STEP[axis]]) / 2 : 0;
            }
        }
        return means;
    }

    /** Root of the sum of squares of what each cell gains, velocity through a face. */
    private double imbalance(float[][] flows) {
        double[] gain = new double[solid.length];
        for (int cell = 0; cell < solid.length; cell++) {
            gain[cell] += source[cell] * GRID.cellSizeM();
            for (int axis = 0; axis < 3; axis++) {
                gain[cell] += flows[axis][cell];
                gain[Math.max(0, cell - STEP[axis])] -= flows[axis][cell];
            }
        }
        return Math.sqrt(Arrays.stream(gain).map(one -> one * one).sum());
    }
}
