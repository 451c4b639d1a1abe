package slackwater.viewer.shape;

import java.util.Arrays;
import slackwater.field.Grid;

/**
 * The closed surface about all that lies above a level, by surface nets (Gibson 1998, "Constrained elastic surface
 * nets", MICCAI; here without the relaxation): each cube of eight neighbouring cell centres that the surface passes
 * through gets one vertex, the mean of the places where the values along its edges, taken as straight lines, pass the
 * level. Four such vertices about each passed edge make two triangles. Exact for a plane; for a sphere the error in
 * area and volume falls with the square of the cell. No table, and half the triangles of marching cubes.
 */
public final class Isosurface {
    private static final int[][] EDGES = {{0, 1}, {2, 3}, {4, 5}, {6, 7}, {0, 2}, {1, 3}, {4, 6}, {5, 7}, {0, 4},
        {1, 5}, {2, 6}, {3, 7}};

    private final Grid grid;
    private final float[] values;
    private final float level;
    private final boolean toGlass;
    private final int nx;
    private final int ny;
    private final Floats points = new Floats();
    private final Floats normals = new Floats();
    private int[] corners = new int[256];
    private int cornerCount;

    private Isosurface(Grid grid, float[] values, float level, boolean toGlass) {
        this.grid = grid;
        this.toGlass = toGlass;
        this.values = values;
        this.level = level;
        this.nx = grid.nx() + 1;
        this.ny = grid.ny() + 1;
    }

    /**
     * The surface, in metres, turned outwards, with normals down the slope of the values. Beyond the grid lies nothing,
     * so what reaches the glass is closed there, within a cell of it.
     *
     * @param values one value a cell
     * @param level above 0
     */
    public static Surface of(Grid grid, float[] values, double level) {
        return new Isosurface(grid, values, checked(grid, values, level), false).find();
    }

    /** The same, but what reaches the glass goes on up to it and is closed just there. */
    public static Surface upToGlass(Grid grid, float[] values, double level) {
        return new Isosurface(grid, values, checked(grid, values, level), true).find();
    }

    private static float checked(Grid grid, float[] values, double level) {
        if (!(level > 0) || values.length != grid.cells()) {
            throw new IllegalArgumentException("a level must be above 0 and every cell have a value: " + level);
        }
        return (float) level;
    }

    /** Cubes are numbered by the cell at their lowest corner, from -1 on, since the padding has cubes too. */
    private Surface find() {
        int[] below = new int[nx * ny];
        int[] here = new int[nx * ny];
        float[] cube = new float[8];
        for (int k = -1; k < grid.nz(); k++) {
            for (int j = -1; j < grid.ny(); j++) {
                for (int i = -1; i < grid.nx(); i++) {
                    here[at(i, j)] = vertex(i, j, k, cube);
                    join(i, j, k, here, below);
                }
            }
            int[] spare = below;
            below = here;
            here = spare;
        }
        return new Surface(points.array(), normals.array(), Arrays.copyOf(corners, cornerCount));
    }

    private int at(int i, int j) {
        return (j + 1) * nx + i + 1;
    }

    private float value(int i, int j, int k) {
        boolean beyond = i < 0 || j < 0 || k < 0 || i >= grid.nx() || j >= grid.ny() || k >= grid.nz();
        if (beyond && !toGlass) {
            return 0;
        }
        float nearest = values[grid.index(within(i, grid.nx()), within(j, grid.ny()), within(k, grid.nz()))];
        // As far below the level as the cell at the glass lies above it: so the level is passed on the glass.
        return beyond ? Math.min(nearest, 2 * level - nearest) : nearest;
    }

    private static int within(int index, int count) {
        return Math.max(0, Math.min(count - 1, index));
    }

    private boolean in(int i, int j, int k) {
        return value(i, j, k) > level;
    }

    /** Makes the vertex of the cube above a cell, if the surface passes through it; its number, or -1. */
    private int vertex(int i, int j, int k, float[] cube) {
        int inside = 0;
        for (int n = 0; n < 8; n++) {
            cube[n] = value(i + (n & 1), j + (n >> 1 & 1), k + (n >> 2));
            inside += cube[n] > level ? 1 : 0;
        }
        if (inside == 0 || inside == 8) {
            return -1;
        }
        double x = 0;
        double y = 0;
        double z = 0;
        int passed = 0;
        for (int[] edge : EDGES) {
            float a = cube[edge[0]];
            float b = cube[edge[1]];
            if (a > level != b > level) {
                double share = (level - a) / (b - a);
                int step = edge[1] ^ edge[0];
                x += (edge[0] & 1) + (step == 1 ? share : 0);
                y += (edge[0] >> 1 & 1) + (step == 2 ? share : 0);
                z += (edge[0] >> 2) + (step == 4 ? share : 0);
                passed++;
            }
        }
        double h = grid.cellSizeM();
        points.add((float) ((i + 0.5 + x / passed) * h));
        points.add((float) ((j + 0.5 + y / passed) * h));
        points.add((float) ((k + 0.5 + z / passed) * h));
        normal(cube);
        return points.size() / 3 - 1;
    }

    private void normal(float[] cube) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int n = 0; n < 8; n++) {
            x -= (n & 1) == 1 ? cube[n] : -cube[n];
            y -= (n >> 1 & 1) == 1 ? cube[n] : -cube[n];
            z -= n >> 2 == 1 ? cube[n] : -cube[n];
        }
        double length = Math.max(Math.sqrt(x * x + y * y + z * z), 1e-20);
        normals.add((float) (x / length));
        normals.add((float) (y / length));
        normals.add((float) (z / length));
    }

    /** The triangles about the three edges that lead up from a cell's centre. */
    private void join(int i, int j, int k, int[] here, int[] below) {
        boolean in = in(i, j, k);
        if (j >= 0 && k >= 0 && in != in(i + 1, j, k)) {
            quad(in, below[at(i, j - 1)], below[at(i, j)], here[at(i, j)], here[at(i, j - 1)]);
        }
        if (i >= 0 && k >= 0 && in != in(i, j + 1, k)) {
            quad(in, below[at(i - 1, j)], here[at(i - 1, j)], here[at(i, j)], below[at(i, j)]);
        }
        if (i >= 0 && j >= 0 && in != in(i, j, k + 1)) {
            quad(in, here[at(i - 1, j - 1)], here[at(i, j - 1)], here[at(i, j)], here[at(i - 1, j)]);
        }
    }

    private void quad(boolean in, int a, int b, int c, int d) {
        if (in) {
            triangle(a, b, c);
            triangle(a, c, d);
        } else {
            triangle(a, c, b);
            triangle(a, d, c);
        }
    }

    private void triangle(int a, int b, int c) {
        if (cornerCount + 3 > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[cornerCount++] = a;
        corners[cornerCount++] = b;
        corners[cornerCount++] = c;
    }
}
