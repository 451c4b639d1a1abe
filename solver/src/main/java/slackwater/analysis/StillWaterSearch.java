package slackwater.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;

/** Finds the connected regions of still water; cells touch through their six faces. */
final class StillWaterSearch {
    private static final double LEAST_VOLUME_M3 = 1e-4;
    private static final int LEAST_CELLS = 8;
    private static final int PLACE_POINTS = 200;

    private final FlowStatistics flow;
    private final Grid grid;
    private final Places places;
    private final float[] probability;
    private final boolean[] waiting;

    /** @param probability that each cell is still */
    StillWaterSearch(FlowStatistics flow, float[] probability, Places places) {
        this.flow = flow;
        this.grid = flow.grid();
        this.places = places;
        this.probability = probability;
        this.waiting = new boolean[grid.cells()];
    }

    StillWater find() {
        int water = 0;
        double expected = 0;
        for (int cell = 0; cell < grid.cells(); cell++) {
            waiting[cell] = probability[cell] > StillWater.LIKELY;
            water += flow.fluid()[cell] ? 1 : 0;
            expected += probability[cell];
        }
        int still = above(StillWater.LIKELY);
        double cellM3 = grid.cellVolumeM3();
        List<StillRegion> regions = new ArrayList<>();
        int scattered = 0;
        int pockets = 0;
        for (int cell = 0; cell < grid.cells(); cell++) {
            if (waiting[cell]) {
                int[] region = grow(cell);
                if (region.length >= LEAST_CELLS && region.length * cellM3 >= LEAST_VOLUME_M3) {
                    regions.add(describe(region, water));
                } else {
                    scattered += region.length;
                    pockets++;
                }
            }
        }
        regions.sort(Comparator.comparingDouble(StillRegion::volumeM3).reversed());
        return new StillWater(List.copyOf(regions), scattered * cellM3, pockets, still * cellM3,
                water == 0 ? 0 : (double) still / water, above(StillWater.SURELY) * cellM3,
                above(StillWater.POSSIBLY) * cellM3, expected * cellM3, probability);
    }

    private int above(double least) {
        int count = 0;
        for (float chance : probability) {
            count += chance > least ? 1 : 0;
        }
        return count;
    }

    private int[] grow(int seed) {
        int[] stack = new int[64];
        int size = 0;
        int next = 0;
        waiting[seed] = false;
        stack[size++] = seed;
        while (next < size) {
            for (int neighbour : neighbours(stack[next++])) {
                if (waiting[neighbour]) {
                    waiting[neighbour] = false;
                    stack = size == stack.length ? Arrays.copyOf(stack, 2 * size) : stack;
                    stack[size++] = neighbour;
                }
            }
        }
        return Arrays.copyOf(stack, size);
    }

    /** The six neighbours of a cell; at a border the cell itself stands in. */
    private int[] neighbours(int cell) {
        int i = cell % grid.nx();
        int j = cell / grid.nx() % grid.ny();
        int k = cell / (grid.nx() * grid.ny());
        int layer = grid.nx() * grid.ny();
        return new int[] {
            i > 0 ? cell - 1 : cell, i < grid.nx() - 1 ? cell + 1 : cell,
            j > 0 ? cell - grid.nx() : cell, j < grid.ny() - 1 ? cell + grid.nx() : cell,
            k > 0 ? cell - layer : cell, k < grid.nz() - 1 ? cell + layer : cell};
    }

    private StillRegion describe(int[] region, int waterCells) {
        Vec3 sum = Vec3.ZERO;
        Vec3 low = grid.centreM(region[0]);
        Vec3 high = low;
        double speed = 0;
        List<Vec3> some = new ArrayList<>();
        int stride = Math.max(1, region.length / PLACE_POINTS);
        for (int n = 0; n < region.length; n++) {
            Vec3 at = grid.centreM(region[n]);
            sum = sum.plus(at);
            low = new Vec3(Math.min(low.x(), at.x()), Math.min(low.y(), at.y()), Math.min(low.z(), at.z()));
            high = new Vec3(Math.max(high.x(), at.x()), Math.max(high.y(), at.y()), Math.max(high.z(), at.z()));
            speed += flow.meanSpeed()[region[n]];
            if (n % stride == 0) {
                some.add(at);
            }
        }
        double half = grid.cellSizeM() / 2;
        Vec3 edge = new Vec3(half, half, half);
        Bounds bounds = new Bounds(low.minus(edge), high.plus(edge));
        Vec3 centre = sum.times(1.0 / region.length);
        return new StillRegion(region.length * grid.cellVolumeM3(), (double) region.length / waterCells, centre, bounds,
                speed / region.length, places.of(some));
    }
}
