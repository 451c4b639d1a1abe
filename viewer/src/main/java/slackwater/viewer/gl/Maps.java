package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_CLAMP_TO_EDGE;
import static org.lwjgl.opengl.GL41C.GL_LINEAR;
import static org.lwjgl.opengl.GL41C.GL_NEAREST;
import static org.lwjgl.opengl.GL41C.GL_RGBA;
import static org.lwjgl.opengl.GL41C.GL_RGBA8;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE0;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_2D;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_MAG_FILTER;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_MIN_FILTER;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_WRAP_S;
import static org.lwjgl.opengl.GL41C.GL_TEXTURE_WRAP_T;
import static org.lwjgl.opengl.GL41C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL41C.glActiveTexture;
import static org.lwjgl.opengl.GL41C.glBindTexture;
import static org.lwjgl.opengl.GL41C.glDeleteTextures;
import static org.lwjgl.opengl.GL41C.glGenTextures;
import static org.lwjgl.opengl.GL41C.glTexImage2D;
import static org.lwjgl.opengl.GL41C.glTexParameteri;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;
import slackwater.viewer.colour.ColourMap;

/** All colour maps as one texture, a map twice in two rows, so that no map runs into the next. */
final class Maps implements AutoCloseable {
    private static final int STEPS = 256;
    private final int texture = glGenTextures();

    Maps() {
        ColourMap[] all = ColourMap.values();
        ByteBuffer pixels = MemoryUtil.memAlloc(4 * STEPS * 2 * all.length);
        for (ColourMap map : all) {
            for (int twice = 0; twice < 2; twice++) {
                for (int rgb : map.table()) {
                    pixels.put((byte) (rgb >> 16)).put((byte) (rgb >> 8)).put((byte) rgb).put((byte) 255);
                }
            }
        }
        glBindTexture(GL_TEXTURE_2D, texture);
        glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA8, STEPS, 2 * all.length, 0, GL_RGBA, GL_UNSIGNED_BYTE, pixels.flip());
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
        MemoryUtil.memFree(pixels);
    }

    void bind(int unit) {
        glActiveTexture(GL_TEXTURE0 + unit);
        glBindTexture(GL_TEXTURE_2D, texture);
    }

    /** The height in the texture at which a map's colours lie. */
    static float row(ColourMap map) {
        return (map.ordinal() + 0.5f) / ColourMap.values().length;
    }

    @Override
    public void close() {
        glDeleteTextures(texture);
    }
}
