package slackwater.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeshFileTest {
    @TempDir
    private Path folder;

    @Test
    void everyKindGivesTheSameCube() throws Exception {
        write("cube.stl", IcoSphere.stl(MeshTest.cube()));
        write("ascii.stl", ascii(MeshTest.cube()));
        write("cube.obj", obj(MeshTest.cube()));
        write("cube.ply", ply(MeshTest.cube()));
        write("cube.glb", glb(MeshTest.cube()));
        for (String name : new String[] {"cube.stl", "ascii.stl", "cube.obj", "cube.ply", "cube.glb"}) {
            Mesh mesh = read(name);
            assertEquals(12, mesh.triangleCount(), name);
            assertEquals(64, mesh.volumeM3(), 1e-12, name);
            assertTrue(mesh.contains(new Vec3(0, 0, 2)), name);
        }
    }

    @Test
    void aFaceOfFourCornersIsCutInTwo() throws Exception {
        write("quads.obj", """
                v 0 0 0
                v 1 0 0
                v 1 1 0
                v 0 1 0
                v 0 0 1
                v 1 0 1
                v 1 1 1
                v 0 1 1
                f 4 3 2 1
                f 5 6 7 8
                f 1 2 6 5
                f 2 3 7 6
                f 3 4 8 7
                f 4 1 5 8
                """);
        assertEquals(12, read("quads.obj").triangleCount());
        assertEquals(1, read("quads.obj").volumeM3(), 1e-12);
    }

    @Test
    void unusableFilesAreRefusedInPlainWords() throws Exception {
        byte[] whole = IcoSphere.stl(MeshTest.cube());
        write("truncated.stl", Arrays.copyOf(whole, whole.length / 2));
        write("noise.stl", new Random(1).ints(3000, 0, 256).mapToObj(i -> String.valueOf((char) i))
                .collect(Collectors.joining()));
        write("noise.glb", "glTF and then nonsense");
        write("empty.ply", "");
        write("points.obj", "v 0 0 0\nv 1 0 0\nv 0 1 0\n");
        write("rock.txt", "a rock");
        assertSays("is missing", "none.stl");
        assertSays("cannot be read as .stl", "truncated.stl");
        assertSays("cannot be read as .stl", "noise.stl");
        assertSays("cannot be read as .glb", "noise.glb");
        assertSays("is empty", "empty.ply");
        assertSays("", "points.obj");
        assertSays("must end in .stl", "rock.txt");
        try (RandomAccessFile huge = new RandomAccessFile(folder.resolve("huge.stl").toFile(), "rw")) {
            huge.setLength(65L << 20);
        }
        assertSays("has 65 MB, must have at most 64", "huge.stl");
    }

    /** Run with -Dslackwater.write=true to make the example rock anew. */
    @Test
    void theExampleRockIsTheOneMadeHere() throws Exception {
        Path file = Path.of("../scenarios/meshes/rock.stl");
        if (Boolean.getBoolean("slackwater.write")) {
            Files.createDirectories(file.getParent());
            Files.write(file, ExampleRock.stl());
        }
        assertArrayEquals(ExampleRock.stl(), Files.readAllBytes(file));
        assertTrue(Files.size(file) < 500_000);
    }

    private Mesh read(String name) throws MeshFault {
        return Mesh.read(folder.resolve(name), new MeshPlacement(name, 1, false, 0, Vec3.ZERO));
    }

    private void assertSays(String words, String name) {
        MeshFault fault = assertThrows(MeshFault.class, () -> read(name), name);
        assertTrue(fault.getMessage().contains(words), fault.getMessage());
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private void write(String name, byte[] bytes) throws IOException {
        Files.write(folder.resolve(name), bytes);
    }

    private static String ascii(Triangles surface) {
        return IntStream.range(0, surface.count())
                .mapToObj(face -> "facet normal 0 0 0\nouter loop\n" + IntStream.range(0, 3)
                        .mapToObj(i -> "vertex " + spaced(surface.corner(face, i)) + "\n").collect(Collectors.joining())
                        + "endloop\nendfacet\n")
                .collect(Collectors.joining("", "solid cube\n", "endsolid cube\n"));
    }

    private static String obj(Triangles surface) {
        return vertices(surface, "v ") + IntStream.range(0, surface.count())
                .mapToObj(face -> "f " + numbers(surface, face, 1) + "\n").collect(Collectors.joining());
    }

    private static String ply(Triangles surface) {
        return "ply\nformat ascii 1.0\nelement vertex " + surface.points().length / 3
                + "\nproperty float x\nproperty float y\nproperty float z\nelement face " + surface.count()
                + "\nproperty list uchar int vertex_indices\nend_header\n" + vertices(surface, "")
                + IntStream.range(0, surface.count()).mapToObj(face -> "3 " + numbers(surface, face, 0) + "\n")
                        .collect(Collectors.joining());
    }

    /** A binary glTF 2.0 file: a header, the description as JSON, then the numbers. */
    private static byte[] glb(Triangles surface) {
        int places = 4 * surface.points().length;
        int numbers = 4 * surface.corners().length;
        String json = """
                {"asset":{"version":"2.0"},"scene":0,"scenes":[{"nodes":[0]}],"nodes":[{"mesh":0}],
                "meshes":[{"primitives":[{"attributes":{"POSITION":0},"indices":1}]}],
                "buffers":[{"byteLength":%d}],
                "bufferViews":[{"buffer":0,"byteOffset":0,"byteLength":%d},{"buffer":0,"byteOffset":%d,"byteLength":%d}],
                "accessors":[{"bufferView":0,"componentType":5126,"count":%d,"type":"VEC3","min":[0,0,0],"max":[4,4,4]},
                {"bufferView":1,"componentType":5125,"count":%d,"type":"SCALAR"}]}
                """.formatted(places + numbers, places, places, numbers, surface.points().length / 3,
                surface.corners().length);
        byte[] text = (json + " ".repeat(3 - (json.length() + 3) % 4)).getBytes(StandardCharsets.US_ASCII);
        int length = 12 + 8 + text.length + 8 + places + numbers;
        ByteBuffer file = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        file.putInt(0x46546C67).putInt(2).putInt(length);
        file.putInt(text.length).putInt(0x4E4F534A).put(text);
        file.putInt(places + numbers).putInt(0x004E4942);
        Arrays.stream(surface.points()).forEach(place -> file.putFloat((float) place));
        Arrays.stream(surface.corners()).forEach(file::putInt);
        return file.array();
    }

    private static String vertices(Triangles surface, String start) {
        return IntStream.range(0, surface.points().length / 3)
                .mapToObj(i -> start + surface.points()[3 * i] + " " + surface.points()[3 * i + 1] + " "
                        + surface.points()[3 * i + 2] + "\n").collect(Collectors.joining());
    }

    private static String numbers(Triangles surface, int face, int from) {
        return IntStream.range(0, 3).mapToObj(i -> String.valueOf(surface.corners()[3 * face + i] + from))
                .collect(Collectors.joining(" "));
    }

    private static String spaced(Vec3 p) {
        return p.x() + " " + p.y() + " " + p.z();
    }
}
