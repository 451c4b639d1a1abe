package slackwater.viewer.gl;

import java.util.List;
import slackwater.geometry.Vec3;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.shape.Surface;

/**
 * All see-through bodies together, drawn from the farthest triangle to the nearest. The order is that of the triangles'
 * middles along the view; two that pass through each other may swap where they cross.
 */
final class Veils implements AutoCloseable {
    private static final int BUCKETS = 1 << 16;

    private final Mesh mesh;
    private final int[] corners;
    private final float[] middles;
    private Vec3 sortedFor = Vec3.ZERO;

    Veils(List<Body> bodies) {
        Surface all = Surface.joined(bodies.stream().map(Body::surface).toList());
        mesh = new Mesh(bodies);
        corners = all.corners();
        middles = new float[corners.length];
        for (int triangle = 0; triangle < all.triangleCount(); triangle++) {
            for (int axis = 0; axis < 3; axis++) {
                float sum = 0;
                for (int corner = 0; corner < 3; corner++) {
                    sum += all.points()[3 * corners[3 * triangle + corner] + axis];
                }
                middles[3 * triangle + axis] = sum / 3;
            }
        }
    }

    void draw(Vec3 towardsEye) {
        if (!towardsEye.equals(sortedFor)) {
            mesh.order(ordered(towardsEye));
            sortedFor = towardsEye;
        }
        mesh.draw();
    }

    /** A counting sort: time in proportion to the number of triangles. */
    private int[] ordered(Vec3 towardsEye) {
        int count = corners.length / 3;
        float[] near = new float[count];
        float low = Float.MAX_VALUE;
        float high = -Float.MAX_VALUE;
        for (int n = 0; n < count; n++) {
            near[n] = (float) (middles[3 * n] * towardsEye.x() + middles[3 * n + 1] * towardsEye.y()
                    + middles[3 * n + 2] * towardsEye.z());
            low = Math.min(low, near[n]);
            high = Math.max(high, near[n]);
        }
        float scale = high > low ? (BUCKETS - 1) / (high - low) : 0;
        int[] starts = new int[BUCKETS + 1];
        for (float value : near) {
            starts[(int) ((value - low) * scale) + 1]++;
        }
        for (int n = 0; n < BUCKETS; n++) {
            starts[n + 1] += starts[n];
        }
        int[] ordered = new int[corners.length];
        for (int n = 0; n < count; n++) {
            int at = starts[(int) ((near[n] - low) * scale)]++;
            System.arraycopy(corners, 3 * n, ordered, 3 * at, 3);
        }
        return ordered;
    }

    @Override
    public void close() {
        mesh.close();
    }
}
