package slackwater.geometry;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.IntBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.lwjgl.assimp.AIFace;
import org.lwjgl.assimp.AIMesh;
import org.lwjgl.assimp.AIScene;
import org.lwjgl.assimp.AIVector3D;
import org.lwjgl.assimp.Assimp;
import org.lwjgl.system.MemoryUtil;

/** Reads the surfaces in a mesh file through the Open Asset Import Library. */
final class MeshFile {
    static final long MOST_BYTES = 64L << 20;

    /** The endings that a mesh file may have. */
    private static final List<String> ENDINGS = List.of("stl", "obj", "ply", "glb");

    private MeshFile() {
    }

    /** Every face in the file, cut into triangles, in the file's own unit. */
    static Triangles read(Path file) throws MeshFault {
        String ending = ending(file);
        byte[] bytes = bytes(file);
        // The library reads from memory, so that a file cannot make it open another one.
        ByteBuffer memory = MemoryUtil.memAlloc(bytes.length).put(bytes).flip();
        try {
            AIScene scene = Assimp.aiImportFileFromMemory(memory,
                    Assimp.aiProcess_Triangulate | Assimp.aiProcess_PreTransformVertices, ending);
            if (scene == null) {
                throw new MeshFault("cannot be read as ." + ending + "; export it again");
            }
            try {
                return triangles(scene);
            } finally {
                Assimp.aiReleaseImport(scene);
            }
        } catch (LinkageError missing) {
            throw new MeshFault("cannot be read on this machine, the mesh importer does not load ("
                    + missing.getMessage() + "); use boxes, ellipsoids and cylinders");
        } finally {
            MemoryUtil.memFree(memory);
        }
    }

    private static String ending(Path file) throws MeshFault {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        String ending = name.substring(name.lastIndexOf('.') + 1);
        if (!ENDINGS.contains(ending)) {
            throw new MeshFault("is of no known kind, must end in .stl, .obj, .ply or .glb");
        }
        return ending;
    }

    private static byte[] bytes(Path file) throws MeshFault {
        if (!Files.isRegularFile(file)) {
            throw new MeshFault("is missing; put it beside the scenario file or correct its name");
        }
        try {
            long size = Files.size(file);
            if (size > MOST_BYTES) {
                throw new MeshFault("has " + (size >> 20) + " MB, must have at most " + (MOST_BYTES >> 20)
                        + "; simplify it");
            }
            if (size == 0) {
                throw new MeshFault("is empty; export it again");
            }
            return Files.readAllBytes(file);
        } catch (IOException broken) {
            throw new MeshFault("cannot be opened (" + broken.getMessage() + ")");
        }
    }

    private static Triangles triangles(AIScene scene) {
        int vertices = 0;
        int faces = 0;
        for (int m = 0; m < scene.mNumMeshes(); m++) {
            AIMesh mesh = AIMesh.create(scene.mMeshes().get(m));
            vertices += mesh.mNumVertices();
            faces += mesh.mNumFaces();
        }
        double[] points = new double[3 * vertices];
        int[] corners = new int[3 * faces];
        int vertex = 0;
        int corner = 0;
        for (int m = 0; m < scene.mNumMeshes(); m++) {
            AIMesh mesh = AIMesh.create(scene.mMeshes().get(m));
            corner = copyFaces(mesh, vertex, corners, corner);
            vertex = copyVertices(mesh, points, vertex);
        }
        return new Triangles(points, Arrays.copyOf(corners, corner));
    }

    private static int copyVertices(AIMesh mesh, double[] points, int first) {
        AIVector3D.Buffer from = mesh.mVertices();
        for (int i = 0; i < mesh.mNumVertices(); i++) {
            AIVector3D vertex = from.get(i);
            points[3 * (first + i)] = vertex.x();
            points[3 * (first + i) + 1] = vertex.y();
            points[3 * (first + i) + 2] = vertex.z();
        }
        return first + mesh.mNumVertices();
    }

    /** Copies the triangles; points and lines, which hold back no water, are left out. */
    private static int copyFaces(AIMesh mesh, int firstVertex, int[] corners, int first) {
        AIFace.Buffer from = mesh.mFaces();
        int next = first;
        for (int i = 0; i < mesh.mNumFaces(); i++) {
            AIFace face = from.get(i);
            if (face.mNumIndices() == 3) {
                IntBuffer indices = face.mIndices();
                for (int k = 0; k < 3; k++) {
                    corners[next++] = firstVertex + indices.get(k);
                }
            }
        }
        return next;
    }
}
