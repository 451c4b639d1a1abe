package slackwater.discretisation;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import slackwater.field.Grid;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Vec3;
import slackwater.pump.JetSource;

/**
 * The water cells that a source acts on and the share of each; the shares sum to 1.
 *
 * @param cells indices in the grid, ascending
 * @param weights share of each cell
 * @param wholeCells the shares' sum before they were made to sum to 1: the cells that the source fills
 */
record Patch(int[] cells, float[] weights, double wholeCells) {
    /** Half the thickness of a disc, in cells. */
    private static final double HALF_THICKNESS_CELLS = 0.75;
    /** A disc is at least this wide (radius, in cells): narrower ones see the grid. Measured, see docs/numerics.md. */
    static final double LEAST_HALF_WIDTH_CELLS = 1.5;

    /** The disc or sheet of a jet, with edges softened over one cell, so that any place and aim will do. */
    static Patch of(JetSource jet, Voxels voxels) {
        double h = voxels.grid().cellSizeM();
        double halfWidth = Math.max(jet.halfWidthM(), LEAST_HALF_WIDTH_CELLS * h);
        double halfHeight = Math.max(jet.halfHeightM(), LEAST_HALF_WIDTH_CELLS * h);
        Vec3 up = jet.aim().cross(jet.across());
        return collect(voxels, (i, j, k) -> {
            Vec3 away = voxels.grid().centreM(i, j, k).minus(jet.atM());
            double a = Math.abs(away.dot(jet.across()));
            double b = Math.abs(away.dot(up));
            double inside = jet.round() ? edge(halfWidth - Math.hypot(a, b), h)
                    : edge(halfWidth - a, h) * edge(halfHeight - b, h);
            return inside * edge(HALF_THICKNESS_CELLS * h - Math.abs(away.dot(jet.aim())), h);
        }, "outlet of '" + jet.name() + "'");
    }

    /** Cells of a weir: within two cells of the water line and of a stretch of a wall, given as a box in metres. */
    static Patch ofBox(Voxels voxels, Vec3 low, Vec3 high, String what) {
        return collect(voxels, (i, j, k) -> {
            Vec3 centre = voxels.grid().centreM(i, j, k);
            boolean inside = centre.x() > low.x() && centre.x() < high.x() && centre.y() > low.y()
                    && centre.y() < high.y() && centre.z() > low.z() && centre.z() < high.z();
            return inside ? 1 : 0;
        }, what);
    }

    /** Area of a disc of which rock and glass have left this much, in faces of a cell. */
    double areaCells() {
        return wholeCells / (2 * HALF_THICKNESS_CELLS);
    }

    /** Whether two sources act on a cell together. */
    boolean meets(Patch other) {
        for (int cell : cells) {
            if (Arrays.binarySearch(other.cells, cell) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** The cell whose centre is nearest to a point. */
    int nearest(Vec3 pointM, Grid grid) {
        int layer = grid.nx() * grid.ny();
        return IntStream.of(cells).boxed().min(Comparator.comparingDouble((Integer cell) -> grid.centreM(
                cell % grid.nx(), cell / grid.nx() % grid.ny(), cell / layer).minus(pointM).length())).orElseThrow();
    }

    /** The same source on those of its cells that are among some others; empty if none is. */
    Optional<Patch> within(BitSet others) {
        double[] shares = new double[cells.length];
        for (int n = 0; n < cells.length; n++) {
            shares[n] = others.get(cells[n]) ? weights[n] : 0;
        }
        double sum = Arrays.stream(shares).sum();
        if (sum == 0) {
            return Optional.empty();
        }
        int[] kept = IntStream.range(0, cells.length).filter(n -> shares[n] > 0).toArray();
        float[] anew = new float[kept.length];
        for (int n = 0; n < kept.length; n++) {
            anew[n] = (float) (shares[kept[n]] / sum);
        }
        return Optional.of(new Patch(IntStream.of(kept).map(n -> cells[n]).toArray(), anew, sum * wholeCells));
    }

    private interface Weight {
        double at(int i, int j, int k);
    }

    /** 1 inside, 0 outside, straight in between over one cell about the edge. */
    private static double edge(double depthM, double cellSizeM) {
        return Math.max(0, Math.min(1, depthM / cellSizeM + 0.5));
    }

    private static Patch collect(Voxels voxels, Weight weight, String what) {
        Grid grid = voxels.grid();
        int[] cells = new int[64];
        double[] weights = new double[64];
        int count = 0;
        double sum = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    int cell = grid.index(i, j, k);
                    double share = voxels.solid()[cell] ? 0 : weight.at(i, j, k);
                    if (share > 0) {
                        if (count == cells.length) {
                            cells = Arrays.copyOf(cells, 2 * count);
                            weights = Arrays.copyOf(weights, 2 * count);
                        }
                        cells[count] = cell;
                        weights[count++] = share;
                        sum += share;
                    }
                }
            }
        }
        if (count == 0) {
            throw new UnfitGrid("the " + what + " has no water in front of it at a cell of "
                    + Math.round(grid.cellSizeM() * 1e4) / 100.0 + " cm: move it into the water or use smaller cells");
        }
        float[] shares = new float[count];
        for (int n = 0; n < count; n++) {
            shares[n] = (float) (weights[n] / sum);
        }
        return new Patch(Arrays.copyOf(cells, count), shares, sum);
    }
}
