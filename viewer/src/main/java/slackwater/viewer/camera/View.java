package slackwater.viewer.camera;

import slackwater.geometry.Bounds;

/** The sides to look from. Square views have a parallel lens, so that lengths can be read from them. */
public enum View {
    FRONT("front", 0, 0, Lens.PARALLEL), SIDE("side", 90, 0, Lens.PARALLEL), TOP("top", 0, 90, Lens.PARALLEL),
    CORNER("corner", 32, 24, Lens.PERSPECTIVE);

    private final String word;
    private final double yawRad;
    private final double pitchRad;
    private final Lens lens;

    View(String word, double yawDeg, double pitchDeg, Lens lens) {
        this.word = word;
        this.yawRad = Math.toRadians(yawDeg);
        this.pitchRad = Math.toRadians(pitchDeg);
        this.lens = lens;
    }

    /** What people call it. */
    public String word() {
        return word;
    }

    public Lens lens() {
        return lens;
    }

    /** A camera on this side that sees all of a box, within the margins. */
    public Camera on(Bounds boxM, Frame frame, Margins margins) {
        double size = boxM.size().length();
        return new Camera(boxM.centre(), yawRad, pitchRad, 2 * size, lens).fitted(boxM, frame, margins);
    }
}
