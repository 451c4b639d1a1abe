package slackwater.discretisation;

import java.util.Arrays;
import java.util.List;
import slackwater.field.Grid;
import slackwater.pump.JetSource;

/**
 * How fast the water of a tank is driven at its sources, as the grid has them: what the time step must allow for. A
 * disc that rock or glass cuts pushes as hard through what is left of it, discs that share cells push the same water,
 * and what comes in or leaves goes through the faces of its cells.
 */
final class Pace {
    /** A jet and the cells of its disc. */
    record Disc(JetSource jet, Patch patch) {
    }

    /** Water that enters (or leaves, below 0) through some cells, m3/s. */
    record Spout(Patch patch, double flowM3PerS) {
    }

    private static final int[][] WAYS = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};

    private Pace() {
    }

    /** The greatest speed at any source, m/s; 0 if there is none. */
    static double fastestMPerS(List<Disc> discs, List<Spout> spouts, Voxels voxels) {
        double h = voxels.grid().cellSizeM();
        double fastest = 0;
        for (Disc disc : discs) {
            double squares = 0;
            for (Disc other : discs) {
                squares += disc.patch().meets(other.patch()) ? square(slipstreamMPerS(other, h)) : 0;
            }
            fastest = Math.max(fastest, Math.sqrt(squares));
        }
        for (Spout spout : spouts) {
            fastest = Math.max(fastest, Math.abs(spout.flowM3PerS()) / (faces(spout.patch(), voxels) * h * h));
        }
        return fastest;
    }

    /** By momentum theory, sqrt(2 M/A) [Rajaratnam1976], with A no more than what is left of the disc. */
    private static double slipstreamMPerS(Disc disc, double h) {
        double left = Math.sqrt(2 * disc.jet().momentumFluxM4PerS2() / (disc.patch().areaCells() * h * h));
        return Math.max(left, disc.jet().slipstreamMPerS(Patch.LEAST_HALF_WIDTH_CELLS * h));
    }

    private static double square(double value) {
        return value * value;
    }

    /** Faces between a patch and the water about it, at least 1. */
    private static int faces(Patch patch, Voxels voxels) {
        Grid grid = voxels.grid();
        int faces = 0;
        for (int cell : patch.cells()) {
            int i = cell % grid.nx();
            int j = cell / grid.nx() % grid.ny();
            int k = cell / grid.nx() / grid.ny();
            for (int[] way : WAYS) {
                faces += opens(patch, voxels, i + way[0], j + way[1], k + way[2]) ? 1 : 0;
            }
        }
        return Math.max(1, faces);
    }

    private static boolean opens(Patch patch, Voxels voxels, int i, int j, int k) {
        Grid grid = voxels.grid();
        if (i < 0 || j < 0 || k < 0 || i >= grid.nx() || j >= grid.ny() || k >= grid.nz()) {
            return false;
        }
        int cell = grid.index(i, j, k);
        return !voxels.solid()[cell] && Arrays.binarySearch(patch.cells(), cell) < 0;
    }
}
