package slackwater.viewer.gl;

/** An OpenGL 4.1 context of its own, current on the thread that opened it. */
interface Context extends AutoCloseable {
    /** The first that there is: without a window, else in one that is never shown. */
    static Context open() throws NoGraphics {
        try {
            return EglContext.open();
        } catch (NoGraphics none) {
            return HiddenWindow.open(none);
        }
    }

    @Override
    void close();
}
