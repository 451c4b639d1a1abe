package slackwater.viewer.gl;

import org.lwjgl.glfw.GLFW;
import org.lwjgl.opengl.GL;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.system.Platform;

/**
 * A context that belongs to a window which is never shown: for systems that have OpenGL but no EGL, such as Windows and
 * macOS. Needs a session with a screen.
 */
final class HiddenWindow implements Context {
    private final long window;

    private HiddenWindow(long window) {
        this.window = window;
    }

    /** @param instead what to say where there is no such window either */
    static HiddenWindow open(NoGraphics instead) throws NoGraphics {
        try {
            Configuration.OPENGL_CONTEXT_API.set("native");
            if (Platform.get() == Platform.MACOSX) {
                Configuration.GLFW_LIBRARY_NAME.set("glfw_async");
            }
            if (Platform.get() == Platform.LINUX) {
                // Wayland's library complains on the terminal by itself where there is no session.
                GLFW.glfwInitHint(GLFW.GLFW_PLATFORM, GLFW.GLFW_PLATFORM_X11);
            }
            if (!GLFW.glfwInit()) {
                throw instead;
            }
            GLFW.glfwDefaultWindowHints();
            GLFW.glfwWindowHint(GLFW.GLFW_VISIBLE, GLFW.GLFW_FALSE);
            GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MAJOR, 4);
            GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MINOR, 1);
            GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_PROFILE, GLFW.GLFW_OPENGL_CORE_PROFILE);
            GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_FORWARD_COMPAT, GLFW.GLFW_TRUE);
            long window = GLFW.glfwCreateWindow(64, 64, "slackwater", MemoryUtil.NULL, MemoryUtil.NULL);
            if (window == MemoryUtil.NULL) {
                throw instead;
            }
            GLFW.glfwMakeContextCurrent(window);
            HiddenWindow opened = new HiddenWindow(window);
            try {
                GL.createCapabilities();
            } catch (RuntimeException | LinkageError unable) {
                opened.close();
                throw instead;
            }
            return opened;
        } catch (LinkageError | IllegalStateException missing) {
            throw instead;
        }
    }

    @Override
    public void close() {
        GL.setCapabilities(null);
        GLFW.glfwMakeContextCurrent(MemoryUtil.NULL);
        GLFW.glfwDestroyWindow(window);
    }
}
