package slackwater.viewer.gl;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/** Files that are part of the program. */
final class Resource {
    private Resource() {
    }

    /** A file beside this class, in memory outside the heap; the caller frees it. */
    static ByteBuffer bytes(String name) {
        try (InputStream stream = Resource.class.getResourceAsStream(name)) {
            byte[] bytes = stream.readAllBytes();
            return MemoryUtil.memAlloc(bytes.length).put(bytes).flip();
        } catch (IOException gone) {
            throw new IllegalStateException(name + " is part of the program", gone);
        }
    }
}
