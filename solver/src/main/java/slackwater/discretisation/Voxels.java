package slackwater.discretisation;

import java.util.List;
import java.util.stream.IntStream;
import slackwater.field.Grid;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;
import slackwater.scenario.Tank;

/**
 * The tank cut into cells, each water or solid: made once for a tank and its rocks and kept while pumps move.
 *
 * @param grid the cells, up to the water line
 * @param solid true for sand and rock, x fastest
 * @param sandLayers layers of cells that are sand, from the bottom
 */
public record Voxels(Grid grid, boolean[] solid, int sandLayers) {
    /**
     * Cuts a tank. A cell is rock if its centre is. Lengths and the sand's depth are rounded to whole cells: off by at
     * most half a cell.
     *
     * @param cellSizeM edge of a cell, metres
     */
    public static Voxels of(Tank tank, List<Rock> rocks, double cellSizeM) {
        Grid grid = new Grid(cells(tank.insideM().x(), cellSizeM), cells(tank.insideM().y(), cellSizeM),
                cells(tank.waterLevelM(), cellSizeM), cellSizeM);
        boolean[] solid = new boolean[grid.cells()];
        int sandLayers = (int) Math.min(grid.nz(), Math.round(tank.sandDepthM() / cellSizeM));
        IntStream.range(0, grid.nz()).parallel().forEach(k -> fillLayer(grid, k < sandLayers, rocks, solid, k));
        return new Voxels(grid, solid, sandLayers);
    }

    private static int cells(double lengthM, double cellSizeM) {
        return Math.max(1, (int) Math.round(lengthM / cellSizeM));
    }

    private static void fillLayer(Grid grid, boolean sand, List<Rock> rocks, boolean[] solid, int k) {
        List<Bounds> bounds = rocks.stream().map(rock -> rock.solid().bounds()).toList();
        for (int j = 0; j < grid.ny(); j++) {
            for (int i = 0; i < grid.nx(); i++) {
                Vec3 centre = grid.centreM(i, j, k);
                boolean filled = sand;
                for (int n = 0; n < rocks.size() && !filled; n++) {
                    filled = bounds.get(n).contains(centre) && rocks.get(n).solid().contains(centre);
                }
                solid[grid.index(i, j, k)] = filled;
            }
        }
    }

    /** Whether a cell, given by its index, is sand; buried rock counts as sand. */
    public boolean sand(int cell) {
        return cell < (long) sandLayers * grid.nx() * grid.ny();
    }

    /** Solid cells above the sand. */
    public int rockCells() {
        int rock = 0;
        for (int n = 0; n < solid.length; n++) {
            rock += solid[n] && !sand(n) ? 1 : 0;
        }
        return rock;
    }

    /** Cells of water. */
    public int waterCells() {
        int water = 0;
        for (boolean cell : solid) {
            water += cell ? 0 : 1;
        }
        return water;
    }

    /** True where there is water, x fastest. */
    public boolean[] fluid() {
        boolean[] fluid = new boolean[solid.length];
        for (int n = 0; n < solid.length; n++) {
            fluid[n] = !solid[n];
        }
        return fluid;
    }
}
