package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL41C.GL_FLOAT;
import static org.lwjgl.opengl.GL41C.GL_STREAM_DRAW;
import static org.lwjgl.opengl.GL41C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL41C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL41C.glBindBuffer;
import static org.lwjgl.opengl.GL41C.glBindVertexArray;
import static org.lwjgl.opengl.GL41C.glBufferData;
import static org.lwjgl.opengl.GL41C.glDeleteBuffers;
import static org.lwjgl.opengl.GL41C.glDeleteVertexArrays;
import static org.lwjgl.opengl.GL41C.glDrawArrays;
import static org.lwjgl.opengl.GL41C.glEnableVertexAttribArray;
import static org.lwjgl.opengl.GL41C.glGenBuffers;
import static org.lwjgl.opengl.GL41C.glGenVertexArrays;
import static org.lwjgl.opengl.GL41C.glVertexAttribPointer;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.colour.ColourMap;
import slackwater.viewer.gl.Glyphs.Glyph;

/** What lies flat on the picture: words, patches and bars. Measures are units of type from the top left. */
final class Sheet implements AutoCloseable {
    private static final int VERTEX_BYTES = 24;
    private static final int QUAD = 6;
    private static final float PLAIN = 0;
    private static final float LETTER = 1;
    private static final float MAP = 2;
    /** Part of a line's height that lies above the letters' base. */
    private static final double BASE = 0.8;

    private final Shader shader = new Shader("page");
    private final Glyphs glyphs = new Glyphs();
    private final int array = glGenVertexArrays();
    private final int buffer = glGenBuffers();
    private ByteBuffer quads = MemoryUtil.memAlloc(VERTEX_BYTES * QUAD * 512);
    private double scale = 1;

    Sheet() {
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, buffer);
        glEnableVertexAttribArray(0);
        glVertexAttribPointer(0, 2, GL_FLOAT, false, VERTEX_BYTES, 0);
        glEnableVertexAttribArray(1);
        glVertexAttribPointer(1, 3, GL_FLOAT, false, VERTEX_BYTES, 8);
        glEnableVertexAttribArray(2);
        glVertexAttribPointer(2, 4, GL_UNSIGNED_BYTE, true, VERTEX_BYTES, 20);
    }

    /** A clean sheet for a picture. */
    void begin(Frame frame) {
        quads.clear();
        scale = frame.scale();
    }

    void rectangle(double x, double y, double width, double height, Colour colour) {
        quad(corners(x, y, width, height), new float[] {0, 0, 0, 0}, PLAIN, colour);
    }

    /** A rectangle that shows one pixel, or a unit if that is more, on each side of the one that is put upon it. */
    void frame(double x, double y, double width, double height, Colour colour) {
        float[] corners = corners(x, y, width, height);
        float rim = Math.max(1, Math.round(scale));
        for (int n = 0; n < corners.length; n++) {
            boolean far = n % 2 == 0 ? n == 2 || n == 4 : n >= 5;
            corners[n] += far ? rim : -rim;
        }
        quad(corners, new float[] {0, 0, 0, 0}, PLAIN, colour);
    }

    /** A straight line. */
    void line(double[] fromTo, double width, Colour colour) {
        double dx = fromTo[2] - fromTo[0];
        double dy = fromTo[3] - fromTo[1];
        double length = Math.max(Math.hypot(dx, dy), 1e-9);
        double ox = -dy / length * width / 2 * scale;
        double oy = dx / length * width / 2 * scale;
        double x0 = fromTo[0] * scale;
        double y0 = fromTo[1] * scale;
        double x1 = fromTo[2] * scale;
        double y1 = fromTo[3] * scale;
        quad(new float[] {(float) (x0 - ox), (float) (y0 - oy), (float) (x1 - ox), (float) (y1 - oy),
            (float) (x1 + ox), (float) (y1 + oy), (float) (x0 + ox), (float) (y0 + oy)},
                new float[] {0, 0, 0, 0}, PLAIN, colour);
    }

    /** The colours of a map from left to right. */
    void bar(double x, double y, double width, double height, ColourMap map) {
        float row = Maps.row(map);
        quad(corners(x, y, width, height), new float[] {0, row, 1, row}, MAP, Colour.of(0));
    }

    /** Width of a text in units. */
    double width(String text, double size) {
        return glyphs.widthPx(text, linePx(size)) / scale;
    }

    /** A line of text with its top left corner at a place; letters stand on whole pixels, so that they are crisp. */
    void text(String text, double x, double y, double size, Colour colour) {
        int linePx = linePx(size);
        float pen = Math.round(x * scale);
        float base = Math.round((y + size * BASE) * scale);
        for (int letter : text.codePoints().toArray()) {
            Glyph glyph = glyphs.glyph(letter, linePx);
            float left = Math.round(pen) + glyph.left();
            float top = base + glyph.above();
            float right = left + glyph.width();
            float bottom = top + glyph.height();
            quad(new float[] {left, top, right, top, right, bottom, left, bottom},
                    new float[] {Glyphs.onSheet(glyph.x()), Glyphs.onSheet(glyph.y()),
                        Glyphs.onSheet(glyph.x() + glyph.width()), Glyphs.onSheet(glyph.y() + glyph.height())},
                    LETTER, colour);
            pen += glyph.advance();
        }
    }

    private int linePx(double size) {
        return (int) Math.max(4, Math.round(size * 1.16 * scale));
    }

    private float[] corners(double x, double y, double width, double height) {
        float left = Math.round(x * scale);
        float top = Math.round(y * scale);
        float right = Math.max(left + 1, Math.round((x + width) * scale));
        float bottom = Math.max(top + 1, Math.round((y + height) * scale));
        return new float[] {left, top, right, top, right, bottom, left, bottom};
    }

    private void quad(float[] corners, float[] texture, float kind, Colour colour) {
        if (quads.remaining() < QUAD * VERTEX_BYTES) {
            quads = MemoryUtil.memRealloc(quads, 2 * quads.capacity());
        }
        for (int corner : new int[] {0, 1, 2, 0, 2, 3}) {
            quads.putFloat(corners[2 * corner]).putFloat(corners[2 * corner + 1]);
            quads.putFloat(texture[corner == 1 || corner == 2 ? 2 : 0]).putFloat(texture[corner >= 2 ? 3 : 1]);
            quads.putFloat(kind);
            quads.putInt(colour.packed());
        }
    }

    /** Draws everything since the beginning of the sheet. */
    void draw(Frame frame, Maps maps) {
        shader.use();
        shader.put("frame", frame.widthPx(), frame.heightPx());
        shader.putUnit("maps", 0);
        shader.putUnit("glyphs", 1);
        maps.bind(0);
        glyphs.bind(1);
        int count = quads.position() / VERTEX_BYTES;
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, buffer);
        ByteBuffer filled = quads.duplicate().flip();
        glBufferData(GL_ARRAY_BUFFER, filled, GL_STREAM_DRAW);
        glDrawArrays(GL_TRIANGLES, 0, count);
    }

    @Override
    public void close() {
        glDeleteVertexArrays(array);
        glDeleteBuffers(buffer);
        glyphs.close();
        shader.close();
        MemoryUtil.memFree(quads);
    }
}
