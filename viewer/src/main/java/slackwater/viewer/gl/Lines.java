package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL41C.GL_FLOAT;
import static org.lwjgl.opengl.GL41C.GL_STATIC_DRAW;
import static org.lwjgl.opengl.GL41C.GL_TRIANGLE_STRIP;
import static org.lwjgl.opengl.GL41C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL41C.glBindBuffer;
import static org.lwjgl.opengl.GL41C.glBindVertexArray;
import static org.lwjgl.opengl.GL41C.glBufferData;
import static org.lwjgl.opengl.GL41C.glDeleteBuffers;
import static org.lwjgl.opengl.GL41C.glDeleteVertexArrays;
import static org.lwjgl.opengl.GL41C.glDrawArraysInstanced;
import static org.lwjgl.opengl.GL41C.glEnableVertexAttribArray;
import static org.lwjgl.opengl.GL41C.glGenBuffers;
import static org.lwjgl.opengl.GL41C.glGenVertexArrays;
import static org.lwjgl.opengl.GL41C.glVertexAttribDivisor;
import static org.lwjgl.opengl.GL41C.glVertexAttribPointer;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.shape.Polylines;

/** Lines in graphics memory, a record for each straight piece; drawn as flat strips with round ends. */
final class Lines implements AutoCloseable {
    private static final int PIECE_BYTES = 36;
    private static final float NO_SHADE = -1;

    private final int array = glGenVertexArrays();
    private final int pieces = glGenBuffers();
    private final int count;

    Lines(Strokes strokes) {
        Polylines lines = strokes.lines();
        ByteBuffer buffer = MemoryUtil.memAlloc(Math.max(1, lines.pointCount()) * PIECE_BYTES);
        for (int line = 0; line < lines.lineCount(); line++) {
            int first = lines.starts()[line];
            int last = lines.starts()[line + 1] - 1;
            for (int n = first; n < Math.max(last, first + 1); n++) {
                end(buffer, strokes, n);
                end(buffer, strokes, Math.min(n + 1, last));
                buffer.putInt(strokes.paint().colour().packed());
            }
        }
        count = buffer.position() / PIECE_BYTES;
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, pieces);
        glBufferData(GL_ARRAY_BUFFER, buffer.flip(), GL_STATIC_DRAW);
        MemoryUtil.memFree(buffer);
        for (int at = 0; at < 3; at++) {
            glEnableVertexAttribArray(at);
            glVertexAttribPointer(at, 4, at == 2 ? GL_UNSIGNED_BYTE : GL_FLOAT, at == 2, PIECE_BYTES, 16L * at);
            glVertexAttribDivisor(at, 1);
        }
    }

    private static void end(ByteBuffer buffer, Strokes strokes, int n) {
        float[] points = strokes.lines().points();
        buffer.putFloat(points[3 * n]).putFloat(points[3 * n + 1]).putFloat(points[3 * n + 2]);
        buffer.putFloat(strokes.paint().map().isPresent() ? strokes.shades()[n] : NO_SHADE);
    }

    void draw() {
        glBindVertexArray(array);
        glDrawArraysInstanced(GL_TRIANGLE_STRIP, 0, 4, count);
    }

    @Override
    public void close() {
        glDeleteVertexArrays(array);
        glDeleteBuffers(pieces);
    }
}
