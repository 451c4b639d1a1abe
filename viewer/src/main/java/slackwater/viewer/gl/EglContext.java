package slackwater.viewer.gl;

import java.nio.IntBuffer;
import org.lwjgl.PointerBuffer;
import org.lwjgl.egl.EGL;
import org.lwjgl.egl.EGL10;
import org.lwjgl.egl.EGL12;
import org.lwjgl.egl.EGL14;
import org.lwjgl.egl.EGL15;
import org.lwjgl.egl.EXTDeviceEnumeration;
import org.lwjgl.opengl.GL;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.JNI;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/** An OpenGL context that belongs to no window, through EGL: without any screen, or else on a graphics card. */
final class EglContext implements Context {
    /** EGL_PLATFORM_SURFACELESS_MESA and EGL_PLATFORM_DEVICE_EXT of the Khronos registry. */
    private static final int SURFACELESS = 0x31DD;
    private static final int DEVICE = 0x313F;
    private static final int MOST_DEVICES = 16;
    private static final String ADVICE = "install an OpenGL driver with EGL (on Debian and Ubuntu:"
            + " apt-get install libegl1 libgl1-mesa-dri)";

    private final long display;
    private final long context;

    private EglContext(long display, long context) {
        this.display = display;
        this.context = context;
    }

    /** Opens one and makes it current on this thread. */
    static EglContext open() throws NoGraphics {
        Configuration.OPENGL_CONTEXT_API.set("EGL");
        try {
            EglContext opened = surfaceless();
            try {
                GL.createCapabilities();
            } catch (RuntimeException | LinkageError unable) {
                opened.close();
                throw new NoGraphics("No picture can be drawn, the driver that EGL found offers no OpenGL: " + ADVICE
                        + ".");
            }
            return opened;
        } catch (LinkageError | IllegalStateException missing) {
            throw new NoGraphics("No picture can be drawn, the library EGL was not found: " + ADVICE + ".");
        }
    }

    private static EglContext surfaceless() throws NoGraphics {
        long connect = EGL.getCapabilities().eglGetPlatformDisplay;
        try (MemoryStack stack = MemoryStack.stackPush()) {
            if (connect != MemoryUtil.NULL) {
                // LWJGL's own wrapper refuses the null that this platform asks for.
                long display = JNI.callPPP(SURFACELESS, MemoryUtil.NULL, MemoryUtil.NULL, connect);
                long context = context(display, stack);
                if (context != MemoryUtil.NULL) {
                    return new EglContext(display, context);
                }
                PointerBuffer devices = devices(stack);
                for (int n = 0; n < devices.remaining(); n++) {
                    display = JNI.callPPP(DEVICE, devices.get(n), MemoryUtil.NULL, connect);
                    context = context(display, stack);
                    if (context != MemoryUtil.NULL) {
                        return new EglContext(display, context);
                    }
                }
            }
        }
        throw new NoGraphics("No picture can be drawn, no driver offers OpenGL 4.1 without a screen: " + ADVICE + ".");
    }

    private static PointerBuffer devices(MemoryStack stack) {
        PointerBuffer devices = stack.mallocPointer(MOST_DEVICES);
        IntBuffer count = stack.ints(0);
        if (EGL.getCapabilities().eglQueryDevicesEXT == MemoryUtil.NULL
                || !EXTDeviceEnumeration.eglQueryDevicesEXT(devices, count)) {
            return devices.limit(0);
        }
        return devices.limit(count.get(0));
    }

    /** A current context on a display, or NULL where it has none to give. */
    private static long context(long display, MemoryStack stack) {
        if (display == EGL10.EGL_NO_DISPLAY || !EGL10.eglInitialize(display, stack.ints(0), stack.ints(0))) {
            return MemoryUtil.NULL;
        }
        EGL.createDisplayCapabilities(display);
        PointerBuffer configs = stack.mallocPointer(1);
        IntBuffer wanted = stack.ints(EGL12.EGL_RENDERABLE_TYPE, EGL14.EGL_OPENGL_BIT, EGL10.EGL_SURFACE_TYPE, 0,
                EGL10.EGL_NONE);
        IntBuffer found = stack.ints(0);
        if (!EGL12.eglBindAPI(EGL14.EGL_OPENGL_API)
                || !EGL10.eglChooseConfig(display, wanted, configs, found) || found.get(0) == 0) {
            return MemoryUtil.NULL;
        }
        IntBuffer version = stack.ints(EGL15.EGL_CONTEXT_MAJOR_VERSION, 4, EGL15.EGL_CONTEXT_MINOR_VERSION, 1,
                EGL15.EGL_CONTEXT_OPENGL_PROFILE_MASK, EGL15.EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT, EGL10.EGL_NONE);
        long context = EGL10.eglCreateContext(display, configs.get(0), EGL10.EGL_NO_CONTEXT, version);
        boolean current = context != EGL10.EGL_NO_CONTEXT && EGL10.eglMakeCurrent(display, EGL10.EGL_NO_SURFACE,
                EGL10.EGL_NO_SURFACE, context);
        return current ? context : MemoryUtil.NULL;
    }

    @Override
    public void close() {
        GL.setCapabilities(null);
        EGL10.eglMakeCurrent(display, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_SURFACE, EGL10.EGL_NO_CONTEXT);
        EGL10.eglDestroyContext(display, context);
        // The display itself is shared by all contexts of the process, and ends with it.
    }
}
