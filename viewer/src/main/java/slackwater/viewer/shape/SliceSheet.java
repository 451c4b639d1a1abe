package slackwater.viewer.shape;

import java.util.Arrays;
import slackwater.field.Grid;

/**
 * A plane through the water, square to an axis, with a value at each vertex. It goes on for one cell into rock and
 * sand, which hide it there, so that no gap shows between the cells and the true shape of the rock.
 *
 * @param surface four vertices a cell
 * @param values one a vertex: the mean of the water cells that meet there, so that colours run smoothly; beside none,
 *     that of the nearest ones
 */
public record SliceSheet(Surface surface, float[] values) {
    /**
     * Cuts the layer of cells that holds a place.
     *
     * @param placeM along the axis, metres; the nearest layer where it lies outside
     * @param values one value a cell
     */
    public static SliceSheet of(Grid grid, boolean[] fluid, float[] values, Cut cut) {
        return new Cutter(grid, fluid, values, cut).sheet();
    }

    /** Where to cut: square to an axis, at a place along it, metres. */
    public record Cut(Axis axis, double placeM) {
        /** The layer of cells that holds the place; the nearest where it lies outside. */
        int layer(Grid grid) {
            int depth = switch (axis) {
                case X -> grid.nx();
                case Y -> grid.ny();
                case Z -> grid.nz();
            };
            return Math.max(0, Math.min(depth - 1, (int) Math.floor(placeM / grid.cellSizeM())));
        }

        /** The same cut through the middle of the cells, where their values stand. */
        public Cut centred(Grid grid) {
            return new Cut(axis, (layer(grid) + 0.5) * grid.cellSizeM());
        }
    }

    private static final class Cutter {
        private final Grid grid;
        private final boolean[] fluid;
        private final float[] cells;
        private final Cut cut;
        private final int layer;
        private final int columns;
        private final int rows;

        Cutter(Grid grid, boolean[] fluid, float[] cells, Cut cut) {
            this.grid = grid;
            this.fluid = fluid;
            this.cells = cells;
            this.cut = cut;
            this.layer = cut.layer(grid);
            this.columns = cut.axis() == Axis.X ? grid.ny() : grid.nx();
            this.rows = cut.axis() == Axis.Z ? grid.ny() : grid.nz();
        }

        SliceSheet sheet() {
            int[] numbers = new int[(columns + 1) * (rows + 1)];
            Arrays.fill(numbers, -1);
            Floats points = new Floats();
            Floats normals = new Floats();
            Floats values = new Floats();
            int[] corners = new int[6 * columns * rows];
            int count = 0;
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    if (shown(column, row)) {
                        int[] quad = new int[4];
                        for (int n = 0; n < 4; n++) {
                            int c = column + (n == 1 || n == 2 ? 1 : 0);
                            int r = row + (n >> 1);
                            int at = r * (columns + 1) + c;
                            if (numbers[at] < 0) {
                                numbers[at] = values.size();
                                vertex(c, r, points, normals);
                                values.add(mean(c, r));
                            }
                            quad[n] = numbers[at];
                        }
                        for (int n : new int[] {0, 1, 2, 0, 2, 3}) {
                            corners[count++] = quad[n];
                        }
                    }
                }
            }
            Surface surface = new Surface(points.array(), normals.array(), Arrays.copyOf(corners, count));
            return new SliceSheet(surface, values.array());
        }

        private int cell(int column, int row) {
            return switch (cut.axis()) {
                case X -> grid.index(layer, column, row);
                case Y -> grid.index(column, layer, row);
                case Z -> grid.index(column, row, layer);
            };
        }

        private void vertex(int column, int row, Floats points, Floats normals) {
            float h = (float) grid.cellSizeM();
            float place = (float) cut.placeM();
            float[] at = switch (cut.axis()) {
                case X -> new float[] {place, column * h, row * h};
                case Y -> new float[] {column * h, place, row * h};
                case Z -> new float[] {column * h, row * h, place};
            };
            for (int n = 0; n < 3; n++) {
                points.add(at[n]);
                normals.add(n == cut.axis().ordinal() ? 1 : 0);
            }
        }

        /** Whether a cell is water, or solid with water beside it in the plane. */
        private boolean shown(int column, int row) {
            return water(column, row, 0) || water(column, row, 1);
        }

        private boolean water(int column, int row, int about) {
            return !Float.isNaN(mean(column - about, row - about, column + about, row + about));
        }

        private float mean(int column, int row) {
            float near = mean(column - 1, row - 1, column, row);
            return Float.isNaN(near) ? mean(column - 2, row - 2, column + 1, row + 1) : near;
        }

        /** Mean of the cells of water in a stretch of the plane, its ends included; not a number without any. */
        private float mean(int fromColumn, int fromRow, int toColumn, int toRow) {
            float sum = 0;
            int water = 0;
            for (int r = Math.max(0, fromRow); r <= Math.min(rows - 1, toRow); r++) {
                for (int c = Math.max(0, fromColumn); c <= Math.min(columns - 1, toColumn); c++) {
                    int cell = cell(c, r);
                    if (fluid[cell]) {
                        sum += cells[cell];
                        water++;
                    }
                }
            }
            return water == 0 ? Float.NaN : sum / water;
        }
    }
}
