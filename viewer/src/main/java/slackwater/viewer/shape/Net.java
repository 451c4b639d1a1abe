package slackwater.viewer.shape;

import slackwater.geometry.Vec3;

/** A surface as a net of rows and columns; its outside is the side of column direction x row direction. */
final class Net {
    private final int columns;
    private final int rows;
    private final float[] points;
    private final float[] normals;
    private int vertices;

    Net(int columns, int rows) {
        this.columns = columns;
        this.rows = rows;
        this.points = new float[3 * (columns + 1) * (rows + 1)];
        this.normals = new float[points.length];
    }

    /** The next knot, row by row; rows and columns have one knot more than meshes. */
    void add(Vec3 point, Vec3 normal) {
        put(points, point);
        put(normals, normal);
        vertices++;
    }

    private void put(float[] into, Vec3 value) {
        into[3 * vertices] = (float) value.x();
        into[3 * vertices + 1] = (float) value.y();
        into[3 * vertices + 2] = (float) value.z();
    }

    Surface surface() {
        int[] corners = new int[6 * columns * rows];
        int count = 0;
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int a = row * (columns + 1) + column;
                int b = a + columns + 1;
                for (int corner : new int[] {a, a + 1, b + 1, a, b + 1, b}) {
                    corners[count++] = corner;
                }
            }
        }
        return new Surface(points, normals, corners);
    }
}
