package slackwater.viewer.app;

import java.util.Arrays;
import java.util.stream.IntStream;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.scene.Water;

/** Water that was not computed: rolls along the tank, on a grid of any size, to measure how pictures hold up. */
final class Swirl {
    private static final double SPEED_M_PER_S = 0.15;
    private static final int ARRAYS = 8;

    private Swirl() {
    }

    /** @param cellsAlong cells along the front; they are cubes, so the tank says how many there are the other ways */
    static Water in(Scenario scenario, int cellsAlong) {
        Vec3 inside = scenario.tank().insideM();
        double h = inside.x() / cellsAlong;
        Grid grid = new Grid(cellsAlong, (int) Math.max(1, Math.round(inside.y() / h)),
                (int) Math.max(1, Math.round(scenario.tank().waterLevelM() / h)), h);
        boolean[] fluid = new boolean[grid.cells()];
        float[][] arrays = new float[ARRAYS][grid.cells()];
        float[] still = new float[grid.cells()];
        IntStream.range(0, grid.nz()).parallel().forEach(k -> {
            for (int cell = grid.index(0, 0, k); cell < grid.index(0, 0, k) + grid.nx() * grid.ny(); cell++) {
                Vec3 at = grid.centreM(cell);
                fluid[cell] = at.z() > scenario.tank().sandDepthM();
                if (fluid[cell]) {
                    put(arrays, cell, at);
                    still[cell] = Math.max(0, 1 - 8 * arrays[3][cell]);
                }
            }
        });
        return new Water(new FlowStatistics(grid, fluid, arrays[0], arrays[1], arrays[2], arrays[3], arrays[4],
                arrays[5], arrays[6], arrays[7]), still, true);
    }

    private static void put(float[][] arrays, int cell, Vec3 at) {
        double across = Math.sin(14 * at.x());
        double along = Math.cos(17 * at.y());
        double up = Math.sin(15 * at.z());
        arrays[0][cell] = (float) (SPEED_M_PER_S * along * up);
        arrays[1][cell] = (float) (SPEED_M_PER_S * across * up);
        arrays[2][cell] = (float) (SPEED_M_PER_S * across * along);
        float speed = (float) Math.sqrt(arrays[0][cell] * arrays[0][cell] + arrays[1][cell] * arrays[1][cell]
                + arrays[2][cell] * arrays[2][cell]);
        Arrays.stream(new int[] {3, 4}).forEach(n -> arrays[n][cell] = speed);
        arrays[6][cell] = speed * speed;
    }
}
