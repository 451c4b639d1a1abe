package slackwater.backend.cpu;

import slackwater.lattice.LatticeProblem;
import slackwater.lattice.VelocitySet;

/**
 * Where the population of a cell and a direction lies in the one flat array. Each direction has a block of its own, x
 * fastest; rows and planes are padded by one ghost cell that is simply the start of the next, so that a direction is
 * one constant offset.
 */
final class Layout {
    /** Cells swept past the last one, so that no sweep needs a tail: at least one vector of any machine. */
    private static final int SLACK = 64;
    /** Keeps the blocks of the directions off multiples of a page, which would fight for the same cache lines. */
    private static final int PAGE_FLOATS = 1024;
    private static final int SKEW_FLOATS = 144;

    final int pitch;
    final int plane;
    final int first;
    final int stride;
    private final int[][] bases = new int[2][VelocitySet.Q];

    Layout(LatticeProblem problem) {
        pitch = problem.nx() + 1;
        plane = pitch * (problem.ny() + 1);
        first = plane + pitch + 1;
        int needed = first + plane * problem.nz() + plane + pitch + 1 + SLACK;
        stride = (needed + PAGE_FLOATS - 1) / PAGE_FLOATS * PAGE_FLOATS + SKEW_FLOATS;
        for (int i = 0; i < VelocitySet.Q; i++) {
            bases[0][i] = i * stride;
            bases[1][i] = VelocitySet.opposite(i) * stride - offset(i);
        }
    }

    /** Floats in the array for a tank of this size, at most. */
    static long floats(int nx, int ny, int nz) {
        long plane = (nx + 1L) * (ny + 1L);
        return VelocitySet.Q * (plane * (nz + 3L) + PAGE_FLOATS + SKEW_FLOATS + SLACK);
    }

    int floats() {
        return VelocitySet.Q * stride;
    }

    /** Padded index of a cell. */
    int cell(int i, int j, int k) {
        return first + k * plane + j * pitch + i;
    }

    /** Padded index of a cell of a problem. */
    int home(LatticeProblem problem, int cell) {
        int row = cell / problem.nx();
        return cell(cell - row * problem.nx(), row % problem.ny(), row / problem.ny());
    }

    /** Where each direction of cell 0 is read in a step, even (0) or odd (1). Not to be written. */
    int[] bases(int parity) {
        return bases[parity];
    }

    int base(int parity, int direction) {
        return bases[parity][direction];
    }

    /** Distance in the array from a cell to its neighbour in a direction. */
    int offset(int direction) {
        return VelocitySet.cx(direction) + pitch * VelocitySet.cy(direction) + plane * VelocitySet.cz(direction);
    }
}
