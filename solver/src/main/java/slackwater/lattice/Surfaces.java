package slackwater.lattice;

import java.util.List;
import slackwater.lattice.BoundaryCondition.NoSlip;
import slackwater.lattice.BoundaryCondition.Wall;

/**
 * What kind of wall the surface of each solid cell is.
 *
 * @param walls the kinds there are, at most 128
 * @param kinds for each cell its number in that list, x fastest; empty if all solid cells are of the first kind
 */
public record Surfaces(List<Wall> walls, byte[] kinds) {
    public Surfaces {
        walls = List.copyOf(walls);
        if (walls.isEmpty() || walls.size() > Byte.MAX_VALUE + 1) {
            throw new IllegalArgumentException(walls.size() + " kinds of wall: there must be 1 to 128");
        }
        for (byte kind : kinds) {
            if (kind < 0 || kind >= walls.size()) {
                throw new IllegalArgumentException("a cell is of kind " + kind + ", and there are " + walls.size());
            }
        }
    }

    /** The same everywhere. */
    public static Surfaces all(Wall wall) {
        return new Surfaces(List.of(wall), new byte[0]);
    }

    /** Plain bounce-back everywhere. */
    public static Surfaces noSlip() {
        return all(new NoSlip());
    }

    /** The wall that a solid cell is. */
    public Wall wall(int cell) {
        return walls.get(kinds.length == 0 ? 0 : kinds[cell]);
    }
}
