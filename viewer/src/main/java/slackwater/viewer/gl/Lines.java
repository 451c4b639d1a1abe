package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL41C.GL_ELEMENT_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL41C.GL_FLOAT;
import static org.lwjgl.opengl.GL41C.GL_STATIC_DRAW;
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
import org.lwjgl.system.MemoryUtil;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.shape.Polylines;

/**
 * Lines in graphics memory: each straight piece four times, once a corner of the flat strip with round ends that it is
 * drawn as. One record with four corners counted off it would take a quarter of the memory, but where the processor
 * draws, every piece would then be a drawing of its own.
 */
final class Lines implements AutoCloseable {
    private static final int PIECE_BYTES = 36;
    private static final int CORNERS = 4;
    private static final int[] TRIANGLES = {0, 1, 2, 2, 1, 3};
    private static final float NO_SHADE = -1;

    private final int array = glGenVertexArrays();
    private final int corners = glGenBuffers();
    private final int triangles = glGenBuffers();
    private final int count;

    Lines(Strokes strokes) {
        Polylines lines = strokes.lines();
        ByteBuffer buffer = MemoryUtil.memAlloc(Math.max(1, lines.pointCount()) * CORNERS * PIECE_BYTES);
        for (int line = 0; line < lines.lineCount(); line++) {
            int first = lines.starts()[line];
            int last = lines.starts()[line + 1] - 1;
            for (int n = first; n < Math.max(last, first + 1); n++) {
                for (int corner = 0; corner < CORNERS; corner++) {
                    end(buffer, strokes, n);
                    end(buffer, strokes, Math.min(n + 1, last));
                    buffer.putInt(strokes.paint().colour().packed());
                }
            }
        }
        count = buffer.position() / PIECE_BYTES / CORNERS;
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, corners);
        glBufferData(GL_ARRAY_BUFFER, buffer.flip(), GL_STATIC_DRAW);
        MemoryUtil.memFree(buffer);
        for (int at = 0; at < 3; at++) {
            glEnableVertexAttribArray(at);
            glVertexAttribPointer(at, 4, at == 2 ? GL_UNSIGNED_BYTE : GL_FLOAT, at == 2, PIECE_BYTES, 16L * at);
        }
        putTriangles();
    }

    private void putTriangles() {
        IntBuffer buffer = MemoryUtil.memAllocInt(Math.max(1, count * TRIANGLES.length));
        for (int piece = 0; piece < count; piece++) {
            for (int corner : TRIANGLES) {
                buffer.put(CORNERS * piece + corner);
            }
        }
        glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, triangles);
        glBufferData(GL_ELEMENT_ARRAY_BUFFER, buffer.flip(), GL_STATIC_DRAW);
        MemoryUtil.memFree(buffer);
    }

    private static void end(ByteBuffer buffer, Strokes strokes, int n) {
        float[] points = strokes.lines().points();
        buffer.putFloat(points[3 * n]).putFloat(points[3 * n + 1]).putFloat(points[3 * n + 2]);
        buffer.putFloat(strokes.paint().map().isPresent() ? strokes.shades()[n] : NO_SHADE);
    }

    void draw() {
        glBindVertexArray(array);
        glDrawElements(GL_TRIANGLES, count * TRIANGLES.length, GL_UNSIGNED_INT, 0);
    }

    @Override
    public void close() {
        glDeleteVertexArrays(array);
        glDeleteBuffers(corners);
        glDeleteBuffers(triangles);
    }
}
