package slackwater.viewer.window;

import static org.lwjgl.glfw.GLFW.GLFW_CLIENT_API;
import static org.lwjgl.glfw.GLFW.GLFW_CONTEXT_CREATION_API;
import static org.lwjgl.glfw.GLFW.GLFW_CONTEXT_VERSION_MAJOR;
import static org.lwjgl.glfw.GLFW.GLFW_CONTEXT_VERSION_MINOR;
import static org.lwjgl.glfw.GLFW.GLFW_EGL_CONTEXT_API;
import static org.lwjgl.glfw.GLFW.GLFW_FALSE;
import static org.lwjgl.glfw.GLFW.GLFW_MOD_CONTROL;
import static org.lwjgl.glfw.GLFW.GLFW_MOD_SHIFT;
import static org.lwjgl.glfw.GLFW.GLFW_MOD_SUPER;
import static org.lwjgl.glfw.GLFW.GLFW_MOUSE_BUTTON_LEFT;
import static org.lwjgl.glfw.GLFW.GLFW_NATIVE_CONTEXT_API;
import static org.lwjgl.glfw.GLFW.GLFW_OPENGL_API;
import static org.lwjgl.glfw.GLFW.GLFW_OPENGL_CORE_PROFILE;
import static org.lwjgl.glfw.GLFW.GLFW_OPENGL_FORWARD_COMPAT;
import static org.lwjgl.glfw.GLFW.GLFW_OPENGL_PROFILE;
import static org.lwjgl.glfw.GLFW.GLFW_PLATFORM;
import static org.lwjgl.glfw.GLFW.GLFW_PLATFORM_X11;
import static org.lwjgl.glfw.GLFW.GLFW_PRESS;
import static org.lwjgl.glfw.GLFW.GLFW_RELEASE;
import static org.lwjgl.glfw.GLFW.GLFW_REPEAT;
import static org.lwjgl.glfw.GLFW.GLFW_SCALE_TO_MONITOR;
import static org.lwjgl.glfw.GLFW.GLFW_TRUE;
import static org.lwjgl.glfw.GLFW.glfwCreateWindow;
import static org.lwjgl.glfw.GLFW.glfwDefaultWindowHints;
import static org.lwjgl.glfw.GLFW.glfwDestroyWindow;
import static org.lwjgl.glfw.GLFW.glfwGetFramebufferSize;
import static org.lwjgl.glfw.GLFW.glfwGetKeyName;
import static org.lwjgl.glfw.GLFW.glfwGetMonitorContentScale;
import static org.lwjgl.glfw.GLFW.glfwGetMonitorWorkarea;
import static org.lwjgl.glfw.GLFW.glfwGetPrimaryMonitor;
import static org.lwjgl.glfw.GLFW.glfwGetWindowContentScale;
import static org.lwjgl.glfw.GLFW.glfwGetWindowSize;
import static org.lwjgl.glfw.GLFW.glfwInit;
import static org.lwjgl.glfw.GLFW.glfwInitHint;
import static org.lwjgl.glfw.GLFW.glfwMakeContextCurrent;
import static org.lwjgl.glfw.GLFW.glfwSetCharCallback;
import static org.lwjgl.glfw.GLFW.glfwSetCursorPosCallback;
import static org.lwjgl.glfw.GLFW.glfwSetErrorCallback;
import static org.lwjgl.glfw.GLFW.glfwSetKeyCallback;
import static org.lwjgl.glfw.GLFW.glfwSetMouseButtonCallback;
import static org.lwjgl.glfw.GLFW.glfwSetScrollCallback;
import static org.lwjgl.glfw.GLFW.glfwSetWindowCloseCallback;
import static org.lwjgl.glfw.GLFW.glfwSetWindowFocusCallback;
import static org.lwjgl.glfw.GLFW.glfwSetWindowShouldClose;
import static org.lwjgl.glfw.GLFW.glfwSetWindowSize;
import static org.lwjgl.glfw.GLFW.glfwSetWindowTitle;
import static org.lwjgl.glfw.GLFW.glfwShowWindow;
import static org.lwjgl.glfw.GLFW.glfwSwapBuffers;
import static org.lwjgl.glfw.GLFW.glfwSwapInterval;
import static org.lwjgl.glfw.GLFW.glfwTerminate;
import static org.lwjgl.glfw.GLFW.glfwWaitEventsTimeout;
import static org.lwjgl.glfw.GLFW.glfwWindowHint;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lwjgl.glfw.Callbacks;
import org.lwjgl.glfw.GLFWErrorCallback;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.system.Platform;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.session.Stroke;

/** A window with an OpenGL 4.1 context that is current on the thread that opened it, and its events. */
public final class Window implements AutoCloseable {
    private static final String DRIVER = "install an OpenGL driver (on Debian and Ubuntu: apt-get install libegl1"
            + " libgl1-mesa-dri)";
    private static final String SCREEN = "start it from a desktop, or with Xvfb (apt-get install xvfb libegl1"
            + " libgl1-mesa-dri; then xvfb-run slackwater view ...)";
    private static final String LIBRARIES = "install the system's windowing libraries (on Debian and Ubuntu: apt-get"
            + " install libx11-6 libxext6 libxrandr2 libxcursor1 libxi6 libxinerama1 libegl1 libgl1-mesa-dri)";

    /** What a window's title takes above it, screen coordinates. */
    private static final double TITLE_BAR = 32;

    private final long handle;
    private final double scale;
    private final List<Input> events = new ArrayList<>();

    private Window(long handle, double scale) {
        this.handle = handle;
        this.scale = scale;
        listen();
    }

    /** No window can be had; the message is one sentence that says what to install. */
    public static final class NoWindow extends Exception {
        private static final long serialVersionUID = 1;

        NoWindow(String message) {
            super(message);
        }
    }

    /**
     * Opens a window.
     *
     * @param size width and height in units of type; less where the screen has not the room
     * @param scale pixels a unit of type; 0 takes the screen's own
     * @throws NoWindow where there is no screen, no driver or no library for it
     */
    public static Window open(String title, int[] size, double scale) throws NoWindow {
        if (Platform.get() == Platform.MACOSX) {
            // So that the window need not belong to the process's first thread.
            Configuration.GLFW_LIBRARY_NAME.set("glfw_async");
        } else if (Platform.get() == Platform.LINUX) {
            Configuration.OPENGL_CONTEXT_API.set("EGL");
        }
        StringBuilder said = new StringBuilder();
        try {
            glfwSetErrorCallback(GLFWErrorCallback.create((code, text) ->
                    said.append(said.length() == 0 ? GLFWErrorCallback.getDescription(text) : "")));
            if (Platform.get() == Platform.LINUX && Optional.ofNullable(System.getenv("WAYLAND_DISPLAY")).isEmpty()) {
                // Its library would print a line of its own where there is no such screen.
                glfwInitHint(GLFW_PLATFORM, GLFW_PLATFORM_X11);
            }
            if (!glfwInit()) {
                throw new NoWindow("No window can be opened, there is no screen to show it on (" + said + "): " + SCREEN
                        + ".");
            }
        } catch (LinkageError missing) {
            throw new NoWindow("No window can be opened, a library is missing (" + firstLine(missing) + "): "
                    + LIBRARIES + ".");
        }
        return opened(title, size, scale, said);
    }

    private static String firstLine(Throwable thrown) {
        return String.valueOf(thrown.getMessage()).lines().findFirst().orElse("");
    }

    private static Window opened(String title, int[] size, double scale, StringBuilder said) throws NoWindow {
        double magnified = scale > 0 ? scale : 1;
        int[] room = room(scale > 0 ? 1 : screenScale());
        int width = Math.min(room[0], (int) Math.round(size[0] * magnified));
        int height = Math.min(room[1], (int) Math.round(size[1] * magnified));
        long handle = MemoryUtil.NULL;
        int[] ways = Platform.get() == Platform.LINUX ? new int[] {GLFW_EGL_CONTEXT_API, GLFW_NATIVE_CONTEXT_API}
                : new int[] {GLFW_NATIVE_CONTEXT_API};
        for (int n = 0; n < ways.length && handle == MemoryUtil.NULL; n++) {
            glfwDefaultWindowHints();
            glfwWindowHint(GLFW_CLIENT_API, GLFW_OPENGL_API);
            glfwWindowHint(GLFW_CONTEXT_CREATION_API, ways[n]);
            glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 4);
            glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 1);
            glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
            glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
            glfwWindowHint(GLFW_SCALE_TO_MONITOR, scale > 0 ? GLFW_FALSE : GLFW_TRUE);
            handle = glfwCreateWindow(width, height, title, MemoryUtil.NULL, MemoryUtil.NULL);
        }
        if (handle == MemoryUtil.NULL) {
            glfwTerminate();
            throw new NoWindow("No window can be opened, no driver offers OpenGL 4.1 on this screen (" + said + "): "
                    + DRIVER + ".");
        }
        glfwMakeContextCurrent(handle);
        glfwSwapInterval(1);
        glfwShowWindow(handle);
        return new Window(handle, scale);
    }

    /** Pixels a screen coordinate by which the system will enlarge a window on the first screen. */
    private static double screenScale() {
        float[] across = new float[1];
        float[] down = new float[1];
        long screen = glfwGetPrimaryMonitor();
        if (screen == MemoryUtil.NULL || Platform.get() == Platform.MACOSX) {
            return 1;
        }
        glfwGetMonitorContentScale(screen, across, down);
        return across[0] > 0 ? across[0] : 1;
    }

    /**
     * The largest window that the first screen has room for, beside its bars and with a title above it.
     *
     * @param enlarged by how much the system will enlarge what is asked for
     */
    private static int[] room(double enlarged) {
        int[] width = new int[1];
        int[] height = new int[1];
        long screen = glfwGetPrimaryMonitor();
        if (screen != MemoryUtil.NULL) {
            glfwGetMonitorWorkarea(screen, new int[1], new int[1], width, height);
        }
        boolean known = width[0] > 0 && height[0] > 0;
        return known ? new int[] {(int) (width[0] / enlarged), (int) ((height[0] - TITLE_BAR * enlarged) / enlarged)}
                : new int[] {Integer.MAX_VALUE, Integer.MAX_VALUE};
    }

    private void listen() {
        glfwSetKeyCallback(handle, (window, key, scancode, action, mods) -> {
            if (action == GLFW_PRESS || action == GLFW_REPEAT) {
                events.add(new Input.Key(new Stroke(asPrinted(key, scancode), (mods & GLFW_MOD_SHIFT) != 0,
                        command(mods)), action == GLFW_REPEAT));
            }
        });
        glfwSetCharCallback(handle, (window, letter) -> events.add(new Input.Letter(letter)));
        glfwSetCursorPosCallback(handle, (window, x, y) -> moved(x, y));
        glfwSetMouseButtonCallback(handle, (window, button, action, mods) -> events.add(action == GLFW_RELEASE
                ? new Input.Release(button == GLFW_MOUSE_BUTTON_LEFT)
                : new Input.Press(button == GLFW_MOUSE_BUTTON_LEFT, (mods & GLFW_MOD_SHIFT) != 0, command(mods))));
        glfwSetScrollCallback(handle, (window, x, y) -> events.add(new Input.Scroll(y)));
        glfwSetWindowCloseCallback(handle, window -> {
            glfwSetWindowShouldClose(window, false);
            events.add(new Input.Close());
        });
        glfwSetWindowFocusCallback(handle, (window, focused) -> {
            if (!focused) {
                events.add(new Input.Blur());
            }
        });
    }

    private static boolean command(int mods) {
        return (mods & (GLFW_MOD_CONTROL | GLFW_MOD_SUPER)) != 0;
    }

    /** Codes of keys are of an American keyboard; what is printed on the person's own counts. */
    private static int asPrinted(int key, int scancode) {
        Optional<String> name = key < Stroke.ESCAPE ? Optional.ofNullable(glfwGetKeyName(key, scancode))
                : Optional.empty();
        return name.filter(printed -> printed.length() == 1 && printed.charAt(0) < 128)
                .map(printed -> (int) printed.toUpperCase(Locale.ROOT).charAt(0)).orElse(key);
    }

    private void moved(double x, double y) {
        int[] width = new int[1];
        int[] height = new int[1];
        glfwGetWindowSize(handle, width, height);
        int[] pixels = pixels();
        double magnify = width[0] > 0 ? (double) pixels[0] / width[0] : 1;
        events.add(new Input.Move(x * magnify, y * magnify));
    }

    private int[] pixels() {
        int[] width = new int[1];
        int[] height = new int[1];
        glfwGetFramebufferSize(handle, width, height);
        return new int[] {width[0], height[0]};
    }

    /** Waits for events, at most some seconds, and gives all since the last time. */
    public List<Input> events(double mostS) {
        glfwWaitEventsTimeout(Math.max(0.001, mostS));
        List<Input> found = List.copyOf(events);
        events.clear();
        return found;
    }

    /** The window's pixels and their scale; empty while it has none, as when it is made an icon. */
    public Optional<Frame> frame() {
        int[] pixels = pixels();
        float[] own = new float[1];
        float[] ignored = new float[1];
        glfwGetWindowContentScale(handle, own, ignored);
        double shown = scale > 0 ? scale : own[0] > 0 ? own[0] : 1;
        return pixels[0] < 1 || pixels[1] < 1 ? Optional.empty()
                : Optional.of(new Frame(pixels[0], pixels[1], shown));
    }

    /** Shows what was drawn. */
    public void swap() {
        glfwSwapBuffers(handle);
    }

    public void title(String title) {
        glfwSetWindowTitle(handle, title);
    }

    /** Asks for another size, screen coordinates. */
    public void resize(int width, int height) {
        glfwSetWindowSize(handle, width, height);
    }

    @Override
    public void close() {
        Callbacks.glfwFreeCallbacks(handle);
        glfwDestroyWindow(handle);
        glfwTerminate();
        Optional.ofNullable(glfwSetErrorCallback(null)).ifPresent(GLFWErrorCallback::free);
    }
}
