package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL41C.GL_ELEMENT_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL41C.GL_FLOAT;
import static org.lwjgl.opengl.GL41C.GL_STATIC_DRAW;
import static org.lwjgl.opengl.GL41C.GL_STREAM_DRAW;
import static org.lwjgl.opengl.GL41C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL41C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL41C.GL_UNSIGNED_INT;
import static org.lwjgl.opengl.GL41C.glBindBuffer;
import static org.lwjgl.opengl.GL41C.glBindVertexArray;
import static org.lwjgl.opengl.GL41C.glBufferData;
import static org.lwjgl.opengl.GL41C.glDeleteBuffers;
import static org.lwjgl.opengl.GL41C.glDeleteVertexArrays;
import static org.lwjgl.opengl.GL41C.glDrawElements;
import static org.lwjgl.opengl.GL41C.glEnableVertexAttribArray;
import static org.lwjgl.opengl.GL41C.glGenBuffers;
import static org.lwjgl.opengl.GL41C.glGenVertexArrays;
import static org.lwjgl.opengl.GL41C.glVertexAttribPointer;

import java.nio.ByteBuffer;
import java.nio.IntBuffer;
import java.util.List;
import org.lwjgl.system.MemoryUtil;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.shape.Surface;

/** Bodies in graphics memory: place, normal, shade (below 0: none) and colour of each vertex, and its triangles. */
final class Mesh implements AutoCloseable {
    private static final int VERTEX_BYTES = 32;
    private static final float NO_SHADE = -1;

    private final int array = glGenVertexArrays();
    private final int vertices = glGenBuffers();
    private final int triangles = glGenBuffers();
    private int cornerCount;

    Mesh(List<Body> bodies) {
        int count = bodies.stream().mapToInt(body -> body.surface().vertexCount()).sum();
        ByteBuffer buffer = MemoryUtil.memAlloc(Math.max(1, count) * VERTEX_BYTES);
        bodies.forEach(body -> put(buffer, body));
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, vertices);
        glBufferData(GL_ARRAY_BUFFER, buffer.flip(), GL_STATIC_DRAW);
        MemoryUtil.memFree(buffer);
        attribute(0, 3, 0);
        attribute(1, 3, 12);
        attribute(2, 1, 24);
        glEnableVertexAttribArray(3);
        glVertexAttribPointer(3, 4, GL_UNSIGNED_BYTE, true, VERTEX_BYTES, 28);
        putTriangles(Surface.joined(bodies.stream().map(Body::surface).toList()).corners(), GL_STATIC_DRAW);
    }

    private static void attribute(int at, int size, int offset) {
        glEnableVertexAttribArray(at);
        glVertexAttribPointer(at, size, GL_FLOAT, false, VERTEX_BYTES, offset);
    }

    private static void put(ByteBuffer buffer, Body body) {
        Surface surface = body.surface();
        boolean mapped = body.paint().map().isPresent();
        Colour colour = body.paint().colour();
        for (int n = 0; n < surface.vertexCount(); n++) {
            for (int axis = 0; axis < 3; axis++) {
                buffer.putFloat(surface.points()[3 * n + axis]);
            }
            for (int axis = 0; axis < 3; axis++) {
                buffer.putFloat(surface.normals()[3 * n + axis]);
            }
            buffer.putFloat(mapped ? body.shades()[n] : NO_SHADE);
            buffer.putInt(colour.packed());
        }
    }

    /** Other triangles of the same vertices, such as the same ones in another order. */
    void order(int[] corners) {
        glBindVertexArray(array);
        putTriangles(corners, GL_STREAM_DRAW);
    }

    private void putTriangles(int[] corners, int usage) {
        IntBuffer buffer = MemoryUtil.memAllocInt(Math.max(1, corners.length)).put(corners).flip();
        glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, triangles);
        glBufferData(GL_ELEMENT_ARRAY_BUFFER, buffer, usage);
        MemoryUtil.memFree(buffer);
        cornerCount = corners.length;
    }

    void draw() {
        glBindVertexArray(array);
        glDrawElements(GL_TRIANGLES, cornerCount, GL_UNSIGNED_INT, 0);
    }

    @Override
    public void close() {
        glDeleteVertexArrays(array);
        glDeleteBuffers(vertices);
        glDeleteBuffers(triangles);
    }
}
