package slackwater.geometry;

import java.nio.file.Path;
import java.util.Objects;

/**
 * A closed surface of triangles, such as a scanned rock. The magnitude of its signed distance is exact to rounding; a
 * point is inside where the surface winds round it, so parts that overlap are one body.
 * A surface that is inside out throughout holds the same points.
 */
public final class Mesh implements Solid {
    private final MeshPlacement placement;
    private final Triangles triangles;
    private final TriangleTree tree;
    /** How far the surface has been moved since its tree was built: a big one takes long to build. */
    private final Vec3 movedM;

    /** @throws MeshFault where the surface is empty, has no finite place, or does not close */
    Mesh(MeshPlacement placement, Triangles loose) throws MeshFault {
        this.placement = placement;
        Triangles joined = loose.joined();
        MeshCheck.check(joined);
        this.triangles = placement.place(joined);
        this.tree = new TriangleTree(triangles);
        this.movedM = Vec3.ZERO;
    }

    private Mesh(Triangles sound, MeshPlacement placement, TriangleTree tree, Vec3 movedM) {
        this.placement = placement;
        this.triangles = sound;
        this.tree = tree;
        this.movedM = movedM;
    }

    /**
     * Reads a mesh and sets it down.
     *
     * @param file a .stl, .obj, .ply or .glb file
     * @param placement its unit, upright axis, turn and place
     * @throws MeshFault where the file is missing, too large, unreadable or broken, or the surface does not close
     */
    public static Mesh read(Path file, MeshPlacement placement) throws MeshFault {
        return new Mesh(placement, MeshFile.read(file));
    }

    /** The same mesh set down elsewhere. */
    public Mesh moved(Vec3 byM) {
        double[] points = triangles.points().clone();
        for (int at = 0; at < points.length; at += 3) {
            points[at] += byM.x();
            points[at + 1] += byM.y();
            points[at + 2] += byM.z();
        }
        return new Mesh(new Triangles(points, triangles.corners()), new MeshPlacement(placement.file(),
                placement.unitM(), placement.yUp(), placement.turnRad(), placement.atM().plus(byM)), tree,
                movedM.plus(byM));
    }

    public MeshPlacement placement() {
        return placement;
    }

    public int triangleCount() {
        return triangles.count();
    }

    /** Nine coordinates a triangle, metres: for drawing. */
    public double[] trianglesM() {
        double[] all = new double[3 * triangles.corners().length];
        for (int corner = 0; corner < triangles.corners().length; corner++) {
            System.arraycopy(triangles.points(), 3 * triangles.corners()[corner], all, 3 * corner, 3);
        }
        return all;
    }

    /** Volume inside, cubic metres. */
    public double volumeM3() {
        return Math.abs(triangles.volumeM3());
    }

    @Override
    public double signedDistanceM(Vec3 point) {
        double distance = tree.distance(point.minus(movedM));
        return contains(point) ? -distance : distance;
    }

    @Override
    public boolean contains(Vec3 point) {
        return tree.winding(point.minus(movedM)) != 0;
    }

    @Override
    public Bounds bounds() {
        return new Bounds(tree.bounds().low().plus(movedM), tree.bounds().high().plus(movedM));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mesh same && placement.equals(same.placement) && triangles.equals(same.triangles);
    }

    @Override
    public int hashCode() {
        return Objects.hash(placement, triangles);
    }

    @Override
    public String toString() {
        return "Mesh[" + placement.file() + ", " + triangles + "]";
    }
}
