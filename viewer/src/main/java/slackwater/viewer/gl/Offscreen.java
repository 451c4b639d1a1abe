package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_PACK_ALIGNMENT;
import static org.lwjgl.opengl.GL41C.GL_RENDERER;
import static org.lwjgl.opengl.GL41C.GL_RGB;
import static org.lwjgl.opengl.GL41C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL41C.glFinish;
import static org.lwjgl.opengl.GL41C.glGetString;
import static org.lwjgl.opengl.GL41C.glPixelStorei;
import static org.lwjgl.opengl.GL41C.glReadPixels;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.scene.Drawing;

/** Draws pictures without a window, a screen or a graphics card. Belongs to the thread that opened it. */
public final class Offscreen implements AutoCloseable {
    private final Context context;
    private final Renderer renderer;

    private Canvas unseen;

    private Offscreen(Context context) {
        this.context = context;
        this.renderer = new Renderer();
        this.unseen = new Canvas(new Frame(1, 1, 1), 0);
    }

    /** @throws NoGraphics where there is nothing to draw with */
    public static Offscreen open() throws NoGraphics {
        Context context = Context.open();
        try {
            return new Offscreen(context);
        } catch (RuntimeException | LinkageError | OutOfMemoryError unable) {
            context.close();
            throw new NoGraphics("No picture can be drawn, the driver does not do all that OpenGL 4.1 asks ("
                    + String.valueOf(unable.getMessage()).lines().findFirst().orElse("").strip()
                    + "): install a newer OpenGL driver.");
        }
    }

    /** What does the drawing, in the driver's words. */
    public String driver() {
        return glGetString(GL_RENDERER);
    }

    /** @throws NoCanvas where there is not the memory for a picture of this size */
    public Image draw(Drawing drawing, Camera camera, Frame frame) {
        try (Canvas page = new Canvas(frame, 0)) {
            renderer.draw(drawing, camera, frame, new Target(page.framebuffer(), 0, 0));
            return read(frame);
        } catch (OutOfMemoryError full) {
            throw new NoCanvas(frame.widthPx(), frame.heightPx());
        }
    }

    /** Draws without looking at the picture, and waits until it is done: to measure how long that takes. */
    public void drawUnseen(Drawing drawing, Camera camera, Frame frame, Renderer.Edges edges) {
        if (!unseen.fits(frame, 0)) {
            unseen.close();
            unseen = new Canvas(frame, 0);
        }
        renderer.draw(drawing, camera, frame, new Target(unseen.framebuffer(), 0, 0), edges);
        glFinish();
    }

    /** The picture in the framebuffer that is bound, such as a window's just after it was drawn. */
    public static Image read(Frame frame) {
        int row = 3 * frame.widthPx();
        ByteBuffer pixels = MemoryUtil.memAlloc(row * frame.heightPx());
        try {
            glPixelStorei(GL_PACK_ALIGNMENT, 1);
            glReadPixels(0, 0, frame.widthPx(), frame.heightPx(), GL_RGB, GL_UNSIGNED_BYTE, pixels);
            byte[] rgb = new byte[row * frame.heightPx()];
            for (int y = 0; y < frame.heightPx(); y++) {
                pixels.get((frame.heightPx() - 1 - y) * row, rgb, y * row, row);
            }
            return new Image(frame.widthPx(), frame.heightPx(), rgb);
        } finally {
            MemoryUtil.memFree(pixels);
        }
    }

    @Override
    public void close() {
        unseen.close();
        renderer.close();
        context.close();
    }
}
