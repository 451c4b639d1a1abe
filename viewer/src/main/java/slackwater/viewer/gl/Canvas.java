package slackwater.viewer.gl;

import static org.lwjgl.opengl.GL41C.GL_COLOR_ATTACHMENT0;
import static org.lwjgl.opengl.GL41C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL41C.GL_DEPTH_ATTACHMENT;
import static org.lwjgl.opengl.GL41C.GL_DEPTH_COMPONENT32F;
import static org.lwjgl.opengl.GL41C.GL_FRAMEBUFFER;
import static org.lwjgl.opengl.GL41C.GL_FRAMEBUFFER_COMPLETE;
import static org.lwjgl.opengl.GL41C.GL_MAX_RENDERBUFFER_SIZE;
import static org.lwjgl.opengl.GL41C.GL_MAX_SAMPLES;
import static org.lwjgl.opengl.GL41C.GL_NEAREST;
import static org.lwjgl.opengl.GL41C.GL_NO_ERROR;
import static org.lwjgl.opengl.GL41C.GL_READ_FRAMEBUFFER;
import static org.lwjgl.opengl.GL41C.GL_DRAW_FRAMEBUFFER;
import static org.lwjgl.opengl.GL41C.GL_RENDERBUFFER;
import static org.lwjgl.opengl.GL41C.GL_RGBA8;
import static org.lwjgl.opengl.GL41C.glBindFramebuffer;
import static org.lwjgl.opengl.GL41C.glBindRenderbuffer;
import static org.lwjgl.opengl.GL41C.glBlitFramebuffer;
import static org.lwjgl.opengl.GL41C.glCheckFramebufferStatus;
import static org.lwjgl.opengl.GL41C.glDeleteFramebuffers;
import static org.lwjgl.opengl.GL41C.glDeleteRenderbuffers;
import static org.lwjgl.opengl.GL41C.glFramebufferRenderbuffer;
import static org.lwjgl.opengl.GL41C.glGenFramebuffers;
import static org.lwjgl.opengl.GL41C.glGenRenderbuffers;
import static org.lwjgl.opengl.GL41C.glGetError;
import static org.lwjgl.opengl.GL41C.glGetInteger;
import static org.lwjgl.opengl.GL41C.glRenderbufferStorageMultisample;
import static org.lwjgl.opengl.GL41C.glViewport;

import slackwater.viewer.camera.Frame;

/** Pixels to draw on, off screen; with several samples a pixel for smooth edges, or one to be read from. */
final class Canvas implements AutoCloseable {
    private final int widthPx;
    private final int heightPx;
    private final int samples;
    private final int framebuffer = glGenFramebuffers();
    private final int colour = glGenRenderbuffers();
    private final int depth = glGenRenderbuffers();

    /**
     * @param samples a pixel; 0 for one that can be read from
     * @throws NoCanvas where the driver has no pixels for it
     */
    Canvas(Frame frame, int samples) {
        this.widthPx = frame.widthPx();
        this.heightPx = frame.heightPx();
        this.samples = samples;
        if (Math.max(widthPx, heightPx) > glGetInteger(GL_MAX_RENDERBUFFER_SIZE)) {
            close();
            throw new NoCanvas(widthPx, heightPx);
        }
        glGetError(); // what went wrong before is not this canvas's
        int most = Math.min(samples, glGetInteger(GL_MAX_SAMPLES));
        int count = samples == 0 ? 0 : most;
        glBindRenderbuffer(GL_RENDERBUFFER, colour);
        glRenderbufferStorageMultisample(GL_RENDERBUFFER, count, GL_RGBA8, widthPx, heightPx);
        glBindRenderbuffer(GL_RENDERBUFFER, depth);
        glRenderbufferStorageMultisample(GL_RENDERBUFFER, count, GL_DEPTH_COMPONENT32F, widthPx, heightPx);
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, colour);
        glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_RENDERBUFFER, depth);
        if (glGetError() != GL_NO_ERROR || glCheckFramebufferStatus(GL_FRAMEBUFFER) != GL_FRAMEBUFFER_COMPLETE) {
            close();
            throw new NoCanvas(widthPx, heightPx);
        }
    }

    boolean fits(Frame frame, int wanted) {
        return widthPx == frame.widthPx() && heightPx == frame.heightPx() && samples == wanted;
    }

    /** Whether a pixel has more than one sample. */
    boolean isSmooth() {
        return samples > 1;
    }

    int framebuffer() {
        return framebuffer;
    }

    void bind() {
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glViewport(0, 0, widthPx, heightPx);
    }

    /** Averages the samples into a corner of another framebuffer, which is bound afterwards. */
    void resolve(int target, int leftPx, int bottomPx) {
        glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer);
        glBindFramebuffer(GL_DRAW_FRAMEBUFFER, target);
        glBlitFramebuffer(0, 0, widthPx, heightPx, leftPx, bottomPx, leftPx + widthPx, bottomPx + heightPx,
                GL_COLOR_BUFFER_BIT, GL_NEAREST);
        glBindFramebuffer(GL_FRAMEBUFFER, target);
        glViewport(leftPx, bottomPx, widthPx, heightPx);
    }

    @Override
    public void close() {
        glDeleteFramebuffers(framebuffer);
        glDeleteRenderbuffers(colour);
        glDeleteRenderbuffers(depth);
    }
}
