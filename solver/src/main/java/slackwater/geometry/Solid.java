package slackwater.geometry;

/** A closed body, metres. */
public sealed interface Solid permits Box, Ellipsoid, Cylinder, Mesh, Union {
    /** Distance to the surface, negative inside, metres. The sign is exact; see each shape for the magnitude. */
    double signedDistanceM(Vec3 point);

    /** A box that holds the whole body. */
    Bounds bounds();

    default boolean contains(Vec3 point) {
        return signedDistanceM(point) < 0;
    }
}
