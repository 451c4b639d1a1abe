package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_BLEND;
import static org.lwjgl.opengl.GL41C.GL_DEPTH_TEST;
import static org.lwjgl.opengl.GL41C.GL_FRAMEBUFFER;
import static org.lwjgl.opengl.GL41C.GL_ONE;
import static org.lwjgl.opengl.GL41C.GL_ONE_MINUS_SRC_ALPHA;
import static org.lwjgl.opengl.GL41C.GL_RENDERER;
import static org.lwjgl.opengl.GL41C.GL_SRC_ALPHA;
import static org.lwjgl.opengl.GL41C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL41C.glBindFramebuffer;
import static org.lwjgl.opengl.GL41C.glBlendFuncSeparate;
import static org.lwjgl.opengl.GL41C.glClear;
import static org.lwjgl.opengl.GL41C.glClearColor;
import static org.lwjgl.opengl.GL41C.glDisable;
import static org.lwjgl.opengl.GL41C.glEnable;
import static org.lwjgl.opengl.GL41C.glGetString;
import static org.lwjgl.opengl.GL41C.glViewport;

import java.util.List;
import java.util.Locale;
import org.lwjgl.opengl.GL;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.scene.Mark;
import slackwater.viewer.scene.Mark.Block;
import slackwater.viewer.scene.Mark.Words;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Type;

/** Draws pages of controls over a whole window, in the context that is current when it is made. */
public final class Paper implements AutoCloseable, Type {
    private static final String ADVICE = "install an OpenGL driver with EGL (on Debian and Ubuntu: apt-get install"
            + " libegl1 libgl1-mesa-dri).";

    /** Of Mesa, of browsers' makers, and of Windows without a driver. */
    private static final List<String> PROCESSOR_DRIVERS = List.of("llvmpipe", "softpipe", "swrast", "swiftshader",
            "gdi generic");

    private final Sheet sheet = new Sheet();
    private final Maps maps = new Maps();

    /**
     * Makes OpenGL usable on this thread, whose window's context must be current.
     *
     * @throws NoGraphics where its library is missing, or it is older than 4.1
     */
    public static void prepare() throws NoGraphics {
        try {
            if (!GL.createCapabilities().OpenGL41) {
                throw new NoGraphics("The window cannot be drawn, its driver offers less than OpenGL 4.1: " + ADVICE);
            }
        } catch (LinkageError missing) {
            throw new NoGraphics("The window cannot be drawn, a library of OpenGL was not found: " + ADVICE);
        }
    }

    /** Whether the processor draws, for want of a graphics card: then it is for the water too. */
    public static boolean processorDraws() {
        String driver = String.valueOf(glGetString(GL_RENDERER)).toLowerCase(Locale.ROOT);
        return PROCESSOR_DRIVERS.stream().anyMatch(driver::contains);
    }

    /** Measures at the scale of the last page that was drawn. */
    @Override
    public double width(String text, double size) {
        return sheet.width(text, size);
    }

    /** Wipes a window before anything is drawn on it. */
    public void clear(Frame frame) {
        Colour ground = Palette.GROUND;
        glBindFramebuffer(GL_FRAMEBUFFER, 0);
        glViewport(0, 0, frame.widthPx(), frame.heightPx());
        glClearColor(ground.red(), ground.green(), ground.blue(), 1);
        glClear(GL_COLOR_BUFFER_BIT);
        sheet.begin(frame);
    }

    /** Puts marks over what the window shows. */
    public void draw(List<Mark> marks, Frame frame) {
        glBindFramebuffer(GL_FRAMEBUFFER, 0);
        glViewport(0, 0, frame.widthPx(), frame.heightPx());
        glDisable(GL_DEPTH_TEST);
        glEnable(GL_BLEND);
        glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
        sheet.begin(frame);
        for (Mark mark : marks) {
            if (mark instanceof Block block) {
                sheet.rectangle(block.x(), block.y(), block.width(), block.height(), block.colour());
            } else if (mark instanceof Words words) {
                sheet.text(words.text(), words.x(), words.y(), words.size(), words.colour());
            }
        }
        sheet.draw(frame, maps);
        glDisable(GL_BLEND);
    }

    @Override
    public void close() {
        sheet.close();
        maps.close();
    }
}
