package slackwater.viewer.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;

/** Against flows whose lines are known: a body of water that turns as one, and a uniform stream. */
class StreamlinesTest {
    private static final double RADIUS_M = 0.25;
    private static final Vec3 MIDDLE = new Vec3(0.5, 0.5, 0);

    /** Turns about the vertical at one radian a second; trilinear interpolation has such a flow exactly. */
    private static Current turning() {
        Grid grid = new Grid(50, 50, 10, 0.02);
        boolean[] fluid = new boolean[grid.cells()];
        Arrays.fill(fluid, true);
        float[] u = new float[grid.cells()];
        float[] v = new float[grid.cells()];
        for (int cell = 0; cell < u.length; cell++) {
            Vec3 off = grid.centreM(cell).minus(MIDDLE);
            u[cell] = (float) -off.y();
            v[cell] = (float) off.x();
        }
        return new Current(grid, fluid, u, v, new float[grid.cells()]);
    }

    @Test
    void aLineInTurningWaterIsACircleThatCloses() {
        double round = 2 * Math.PI * RADIUS_M;
        Vec3 seed = MIDDLE.plus(new Vec3(RADIUS_M, 0, 0.1));
        Polylines lines = new Streamlines(turning(), round).from(List.of(seed));
        assertEquals(1, lines.lineCount());
        for (int n = 0; n < lines.pointCount(); n++) {
            double far = Math.hypot(lines.points()[3 * n] - 0.5, lines.points()[3 * n + 1] - 0.5);
            assertEquals(RADIUS_M, far, 1e-5, "point " + n);
            assertEquals(0.1, lines.points()[3 * n + 2], 1e-6);
            assertEquals(RADIUS_M, lines.values()[n], 1e-4, "speed is angle's rate times radius");
        }
        int last = lines.pointCount() - 1;
        double angle = Math.atan2(lines.points()[3 * last + 1] - 0.5, lines.points()[3 * last] - 0.5);
        double walked = last * 0.01;
        double wanted = Math.IEEEremainder(walked / RADIUS_M, 2 * Math.PI);
        assertEquals(wanted, angle, 1e-3, "after " + walked + " m along the circle");
        assertTrue(walked > round - 0.011, "went all the way round: " + walked);
    }

    @Test
    void upstreamAndDownstreamMakeOneLine() {
        Vec3 seed = MIDDLE.plus(new Vec3(RADIUS_M, 0, 0.1));
        Polylines line = new Streamlines(turning(), 0.2).through(List.of(seed));
        assertEquals(1, line.lineCount());
        assertEquals(0.4, line.lengthM(0), 0.02);
        assertTrue(line.points()[1] < 0.5 && line.points()[3 * (line.pointCount() - 1) + 1] > 0.5,
                "it runs with the water");
    }

    @Test
    void aLineEndsAtRockAndAtTheGlass() {
        Grid grid = new Grid(30, 10, 10, 0.01);
        boolean[] fluid = new boolean[grid.cells()];
        float[] u = new float[grid.cells()];
        for (int cell = 0; cell < u.length; cell++) {
            fluid[cell] = grid.centreM(cell).x() < 0.2;
            u[cell] = fluid[cell] ? 0.1f : 0;
        }
        Current current = new Current(grid, fluid, u, new float[grid.cells()], new float[grid.cells()]);
        Polylines line = new Streamlines(current, 5).through(List.of(new Vec3(0.1, 0.05, 0.05)));
        float first = line.points()[0];
        float last = line.points()[3 * (line.pointCount() - 1)];
        assertTrue(first >= 0 && first < 0.006, "begins at the glass: " + first);
        assertTrue(last > 0.194 && last <= 0.2, "ends at the rock: " + last);
        assertEquals(0, new Streamlines(current, 5).from(List.of(new Vec3(0.25, 0.05, 0.05))).lineCount());
    }
}
