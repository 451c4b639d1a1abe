package slackwater.discretisation;

import java.util.ArrayDeque;
import java.util.BitSet;
import slackwater.field.Grid;

/** The water that can be reached from a cell across the faces of cells. */
final class Reach {
    private final Grid grid;
    private final boolean[] solid;
    private final BitSet reached;
    private final ArrayDeque<Integer> ahead = new ArrayDeque<>();

    private Reach(Voxels voxels) {
        grid = voxels.grid();
        solid = voxels.solid();
        reached = new BitSet(solid.length);
    }

    /** All water cells that hang together with a given one. */
    static BitSet from(int cell, Voxels voxels) {
        Reach reach = new Reach(voxels);
        reach.visit(cell);
        while (!reach.ahead.isEmpty()) {
            reach.spread(reach.ahead.pop());
        }
        return reach.reached;
    }

    private void visit(int cell) {
        if (!solid[cell] && !reached.get(cell)) {
            reached.set(cell);
            ahead.push(cell);
        }
    }

    private void spread(int cell) {
        int layer = grid.nx() * grid.ny();
        int i = cell % grid.nx();
        int j = cell / grid.nx() % grid.ny();
        int k = cell / layer;
        visit(i > 0 ? cell - 1 : cell);
        visit(i < grid.nx() - 1 ? cell + 1 : cell);
        visit(j > 0 ? cell - grid.nx() : cell);
        visit(j < grid.ny() - 1 ? cell + grid.nx() : cell);
        visit(k > 0 ? cell - layer : cell);
        visit(k < grid.nz() - 1 ? cell + layer : cell);
    }
}
