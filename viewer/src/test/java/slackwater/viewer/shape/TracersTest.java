package slackwater.viewer.shape;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;

class TracersTest {
    private static final Grid GRID = new Grid(40, 20, 20, 0.02);

    /** Water but for a block of rock in the middle; a stream along x of 5 cm/s. */
    private static Current stream() {
        boolean[] fluid = new boolean[GRID.cells()];
        float[] u = new float[GRID.cells()];
        for (int cell = 0; cell < u.length; cell++) {
            Vec3 at = GRID.centreM(cell);
            fluid[cell] = at.x() < 0.3 || at.x() > 0.5 || at.z() > 0.2;
            u[cell] = fluid[cell] ? 0.05f : 0;
        }
        return new Current(GRID, fluid, u, new float[GRID.cells()], new float[GRID.cells()]);
    }

    @Test
    void specksStayInTheWater() {
        Current current = stream();
        Tracers tracers = new Tracers(current, 500, 3);
        for (int step = 0; step < 200; step++) {
            tracers.advance(0.1);
            float[] at = tracers.points();
            for (int n = 0; n < tracers.count(); n++) {
                assertTrue(current.isWater(at[3 * n], at[3 * n + 1], at[3 * n + 2]), "speck " + n + ", step " + step);
            }
        }
    }

    /** In a uniform stream a speck moves by speed times time. */
    @Test
    void specksMoveWithTheWater() {
        Tracers tracers = new Tracers(stream(), 300, 5);
        float[] before = tracers.points();
        tracers.advance(0.2);
        float[] after = tracers.points();
        int carried = 0;
        for (int n = 0; n < tracers.count(); n++) {
            if (after[3 * n + 1] == before[3 * n + 1]) {
                assertEquals(0.01, after[3 * n] - before[3 * n], 1e-6);
                carried++;
            }
        }
        assertTrue(carried > 250, "only " + carried + " were carried along");
    }

    @Test
    void theSameSeedGivesTheSameSpecks() {
        Tracers one = new Tracers(stream(), 100, 9);
        Tracers other = new Tracers(stream(), 100, 9);
        for (int step = 0; step < 100; step++) {
            one.advance(0.2);
            other.advance(0.2);
        }
        assertArrayEquals(one.points(), other.points());
    }

    @Test
    void aTrailLeadsBackUpstream() {
        Tracers tracers = new Tracers(stream(), 50, 1);
        Polylines trails = tracers.trails(0.4, 4);
        assertEquals(50, trails.lineCount());
        for (int line = 0; line < trails.lineCount(); line++) {
            int from = trails.starts()[line];
            for (int n = from + 1; n < trails.starts()[line + 1]; n++) {
                assertEquals(trails.points()[3 * n - 3] - 0.005, trails.points()[3 * n], 1e-6);
            }
        }
    }
}
