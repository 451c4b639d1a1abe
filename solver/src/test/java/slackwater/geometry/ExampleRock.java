package slackwater.geometry;

/** The invented scan in scenarios/meshes/rock.stl: a lumpy, flattened ball, in millimetres. */
final class ExampleRock {
    private ExampleRock() {
    }

    /** The bytes of the file. Waves in place of random numbers, so that it comes out the same everywhere. */
    static byte[] stl() {
        return IcoSphere.stl(IcoSphere.of(4, ExampleRock::lump));
    }

    private static Vec3 lump(Vec3 p) {
        double lumps = 1 + 0.16 * Math.sin(3.1 * p.x() + 1.3) * Math.cos(2.7 * p.y() - 0.4)
                + 0.09 * Math.sin(6.7 * p.y() + 5.3 * p.z()) + 0.05 * Math.cos(11.9 * p.x() - 9.1 * p.z())
                + 0.03 * Math.sin(19.7 * p.y() + 2.1) * Math.cos(17.3 * p.x());
        return new Vec3(165 * lumps * p.x(), 120 * lumps * p.y(), 130 * lumps * p.z());
    }
}
