package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_CLAMP_TO_EDGE;
import static org.lwjgl.opengl.GL41C.GL_NEAREST;
import static org.lwjgl.opengl.GL41C.GL_R8;
import static org.lwjgl.opengl.GL41C.GL_RED;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE0;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_2D;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_MAG_FILTER;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_MIN_FILTER;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_WRAP_S;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_WRAP_T;
import static org.lwjgl.opengl.GL41C.GL_UNPACK_ALIGNMENT;
import static org.lwjgl.opengl.GL41C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL41C.glActiveTexture;
import static org.lwjgl.opengl.GL41C.glBindTexture;
import static org.lwjgl.opengl.GL41C.glDeleteTextures;
import static org.lwjgl.opengl.GL41C.glGenTextures;
import static org.lwjgl.opengl.GL41C.glPixelStorei;
import static org.lwjgl.opengl.GL41C.glTexImage2D;
import static org.lwjgl.opengl.GL41C.glTexParameteri;

import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import org.lwjgl.stb.STBTTFontinfo;
import org.lwjgl.stb.STBTruetype;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/**
 * Letters as pictures, drawn when first asked for at a size in whole pixels and kept in one texture. A letter that the
 * font lacks shows as the font's empty box.
 */
final class Glyphs implements AutoCloseable {
    private static final int SIDE = 1024;

    private final ByteBuffer file;
    private final STBTTFontinfo font;
    private final ByteBuffer sheet = MemoryUtil.memCalloc(SIDE * SIDE);
    private final int texture = glGenTextures();
    private final Map<Long, Glyph> known = new HashMap<>();
    private int shelfX = 1;
    private int shelfY = 1;
    private int shelfHeight;
    private boolean changed = true;

    /** A letter: where it lies on the sheet, its size, its offset from the pen and how far the pen goes on; pixels. */
    record Glyph(int x, int y, int width, int height, int left, int above, float advance) {
    }

    Glyphs() {
        file = Resource.bytes("DejaVuSans.ttf");
        font = STBTTFontinfo.malloc();
        if (!STBTruetype.stbtt_InitFont(font, file)) {
            throw new IllegalStateException("the font is part of the program and cannot be read");
        }
    }

    /** A letter at a height of the whole line, pixels. */
    Glyph glyph(int letter, int linePx) {
        return known.computeIfAbsent((long) linePx << Integer.SIZE | letter, key -> drawn(letter, linePx));
    }

    /** Width of a text, pixels. */
    float widthPx(String text, int linePx) {
        return (float) text.codePoints().mapToDouble(letter -> glyph(letter, linePx).advance()).sum();
    }

    private Glyph drawn(int letter, int linePx) {
        try (MemoryStack stack = MemoryStack.stackPush()) {
            float scale = STBTruetype.stbtt_ScaleForPixelHeight(font, linePx);
            var advance = stack.mallocInt(1);
            var bearing = stack.mallocInt(1);
            STBTruetype.stbtt_GetCodepointHMetrics(font, letter, advance, bearing);
            var x0 = stack.mallocInt(1);
            var y0 = stack.mallocInt(1);
            var x1 = stack.mallocInt(1);
            var y1 = stack.mallocInt(1);
            STBTruetype.stbtt_GetCodepointBitmapBox(font, letter, scale, scale, x0, y0, x1, y1);
            int width = x1.get(0) - x0.get(0);
            int height = y1.get(0) - y0.get(0);
            if (!room(width, height)) {
                return new Glyph(0, 0, 0, 0, 0, 0, advance.get(0) * scale);
            }
            Glyph glyph = new Glyph(shelfX, shelfY, width, height, x0.get(0), y0.get(0), advance.get(0) * scale);
            if (width > 0 && height > 0) {
                STBTruetype.stbtt_MakeCodepointBitmap(font, sheet.slice(shelfY * SIDE + shelfX,
                        SIDE * SIDE - shelfY * SIDE - shelfX), width, height, SIDE, scale, scale, letter);
            }
            shelfX += width + 1;
            shelfHeight = Math.max(shelfHeight, height);
            changed = true;
            return glyph;
        }
    }

    /** Makes room on the sheet, on a new shelf if need be; false where it is full. */
    private boolean room(int width, int height) {
        if (shelfX + width + 1 > SIDE) {
            shelfX = 1;
            shelfY += shelfHeight + 1;
            shelfHeight = 0;
        }
        return shelfY + height + 1 <= SIDE;
    }

    void bind(int unit) {
        glActiveTexture(GL_TEXTURE0 + unit);
        glBindTexture(GL_TEXTURE_2D, texture);
        if (changed) {
            glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
            glTexImage2D(GL_TEXTURE_2D, 0, GL_R8, SIDE, SIDE, 0, GL_RED, GL_UNSIGNED_BYTE, sheet);
            glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
            glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_NEAREST);
            glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
            glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
            changed = false;
        }
    }

    static float onSheet(int px) {
        return (float) px / SIDE;
    }

    @Override
    public void close() {
        glDeleteTextures(texture);
        font.free();
        MemoryUtil.memFree(sheet);
        MemoryUtil.memFree(file);
    }
}
