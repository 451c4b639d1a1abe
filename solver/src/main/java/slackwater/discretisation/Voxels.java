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
 */
public record Voxels(Grid grid, boolean[] solid) {
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
        IntStream.range(0, grid.nz()).parallel().forEach(k -> fillLayer(grid, tank, rocks, solid, k));
        return new Voxels(grid, solid);
    }

    private static int cells(double lengthM, double cellSizeM) {
        return Math.max(1, (int) Math.round(lengthM / cellSizeM));
    }

    private static void fillLayer(Grid grid, Tank tank, List<Rock> rocks, boolean[] solid, int k) {
        boolean sand = sandy(grid, tank, k);
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

    private static boolean sandy(Grid grid, Tank tank, int k) {
        return k < Math.round(tank.sandDepthM() / grid.cellSizeM());
    }

    /** Solid cells above the sand. */
    public int rockCells(Tank tank) {
        int rock = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int n = 0; n < grid.nx() * grid.ny() && !sandy(grid, tank, k); n++) {
                rock += solid[k * grid.nx() * grid.ny() + n] ? 1 : 0;
            }
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
