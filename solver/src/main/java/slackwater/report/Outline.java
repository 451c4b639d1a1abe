package slackwater.report;

import java.util.LinkedHashMap;
import java.util.Map;
import slackwater.analysis.Figures;

/**
 * The outline of a patch of cells as an SVG path: marching squares over the cell centres, so that stairs become slopes;
 * along the border of the picture the outline runs on the border.
 */
final class Outline {
    /** Which cells belong to the patch. */
    interface Patch {
        boolean holds(int column, int row);
    }

    /** Middles of a square's edges as offsets in half cells from its low left corner: bottom, right, top, left. */
    private static final int[][] MIDDLES = {{1, 0}, {2, 1}, {1, 2}, {0, 1}};
    /**
     * Segments from edge to edge for each set of corners inside (low left 1, low right 2, top right 4, top left 8),
     * with the inside on the left hand.
     */
    private static final int[][] SEGMENTS = {{}, {0, 3}, {1, 0}, {1, 3}, {2, 1}, {0, 3, 2, 1}, {2, 0}, {2, 3},
        {3, 2}, {0, 2}, {1, 0, 3, 2}, {1, 2}, {3, 1}, {0, 1}, {3, 0}, {}};

    private final int columns;
    private final int rows;
    private final Patch patch;

    Outline(int columns, int rows, Patch patch) {
        this.columns = columns;
        this.rows = rows;
        this.patch = patch;
    }

    /** The path's data, y downwards, with so many picture units a cell; empty where no cell belongs to the patch. */
    String path(double unitsPerCell) {
        Map<Integer, Integer> next = segments();
        StringBuilder path = new StringBuilder();
        while (!next.isEmpty()) {
            int start = next.keySet().iterator().next();
            char command = 'M';
            for (int at = start; next.containsKey(at); at = next.remove(at)) {
                path.append(command).append(point(at, unitsPerCell));
                command = 'L';
            }
            path.append('Z');
        }
        return path.toString();
    }

    private Map<Integer, Integer> segments() {
        Map<Integer, Integer> next = new LinkedHashMap<>();
        for (int row = -1; row < rows; row++) {
            for (int column = -1; column < columns; column++) {
                int corners = (inside(column, row) ? 1 : 0) + (inside(column + 1, row) ? 2 : 0)
                        + (inside(column + 1, row + 1) ? 4 : 0) + (inside(column, row + 1) ? 8 : 0);
                int[] segments = SEGMENTS[corners];
                for (int n = 0; n < segments.length; n += 2) {
                    next.put(key(column, row, segments[n]), key(column, row, segments[n + 1]));
                }
            }
        }
        return next;
    }

    private boolean inside(int column, int row) {
        return column >= 0 && column < columns && row >= 0 && row < rows && patch.holds(column, row);
    }

    private int key(int column, int row, int edge) {
        int x = 2 * column + 1 + MIDDLES[edge][0];
        int y = 2 * row + 1 + MIDDLES[edge][1];
        return y * stride() + x;
    }

    private int stride() {
        return 2 * columns + 1;
    }

    private String point(int key, double unitsPerCell) {
        double x = key % stride() / 2.0;
        double y = rows - key / stride() / 2.0;
        return Figures.plain(x * unitsPerCell) + " " + Figures.plain(y * unitsPerCell);
    }
}
