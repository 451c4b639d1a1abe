package slackwater.viewer.camera;

import org.joml.Matrix4d;
import org.joml.Matrix4f;
import org.joml.Vector4d;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;

/**
 * An eye that goes round a point.
 *
 * @param targetM what it looks at, metres
 * @param yawRad where it stands: 0 before the front pane, pi/2 at the right
 * @param pitchRad how far above, -pi/2..pi/2; pi/2 looks straight down, the back pane at the top of the picture
 * @param distanceM from the target, metres; above 0
 * @param lens how depth shows
 */
public record Camera(Vec3 targetM, double yawRad, double pitchRad, double distanceM, Lens lens) {
    /** Angle of view from bottom to top. */
    public static final double FIELD_RAD = Math.toRadians(28);
    private static final int FITTING_ROUNDS = 40;

    public Camera {
        pitchRad = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, pitchRad));
        if (!(distanceM > 0)) {
            throw new IllegalArgumentException("a camera must have a distance above 0: " + distanceM);
        }
    }

    /** A place in the picture: pixels from the left and from the top, and depth along the view, metres. */
    public record Spot(double xPx, double yPx, double depthM) {
    }

    /** Unit vector from the target to the eye. */
    public Vec3 towardsEye() {
        return new Vec3(Math.sin(yawRad) * Math.cos(pitchRad), -Math.cos(yawRad) * Math.cos(pitchRad),
                Math.sin(pitchRad));
    }

    /** Unit vector to the right of the picture. */
    public Vec3 right() {
        return new Vec3(Math.cos(yawRad), Math.sin(yawRad), 0);
    }

    /** Unit vector to the top of the picture. */
    public Vec3 up() {
        return towardsEye().cross(right());
    }

    public Vec3 eyeM() {
        return targetM.plus(towardsEye().times(distanceM));
    }

    /** Height of what the picture shows at the target, metres. */
    public double heightM() {
        return 2 * distanceM * Math.tan(FIELD_RAD / 2);
    }

    /** From metres to clip coordinates. */
    public Matrix4f matrix(double aspect) {
        return new Matrix4f(precise(aspect));
    }

    /** How much of the depth's range, -1..1, a length along the view takes at the target. */
    public double depthShare(double lengthM) {
        double near = distanceM / 100;
        double far = distanceM * 4 + 10;
        return lens == Lens.PARALLEL ? 2 * lengthM / (2 * far - near)
                : 2 * near * far / (far - near) / (distanceM * distanceM) * lengthM;
    }

    private Matrix4d precise(double aspect) {
        Vec3 eye = eyeM();
        Vec3 up = up();
        double far = distanceM * 4 + 10;
        Matrix4d projection = lens == Lens.PERSPECTIVE
                ? new Matrix4d().perspective(FIELD_RAD, aspect, distanceM / 100, far)
                : new Matrix4d().orthoSymmetric(heightM() * aspect, heightM(), distanceM / 100 - far, far);
        return projection.lookAt(eye.x(), eye.y(), eye.z(), targetM.x(), targetM.y(), targetM.z(), up.x(), up.y(),
                up.z());
    }

    /** Where a point appears; one behind the eye is given as it would be if it were before it, with a depth below 0. */
    public Spot spot(Vec3 pointM, Frame frame) {
        double depth = eyeM().minus(pointM).dot(towardsEye());
        Vector4d clip = precise(frame.aspect()).transform(new Vector4d(pointM.x(), pointM.y(), pointM.z(), 1));
        double w = clip.w == 0 ? 1e-12 : clip.w;
        return new Spot((clip.x / w + 1) / 2 * frame.widthPx(), (1 - clip.y / w) / 2 * frame.heightPx(), depth);
    }

    /** The line of sight through a pixel, from the eye; with a parallel lens from a plane before all that is shown. */
    public Ray ray(double xPx, double yPx, Frame frame) {
        double across = (xPx / frame.widthPx() * 2 - 1) * heightM() / 2 * frame.aspect();
        double above = (1 - yPx / frame.heightPx() * 2) * heightM() / 2;
        Vec3 through = targetM.plus(right().times(across)).plus(up().times(above));
        return lens == Lens.PERSPECTIVE ? new Ray(eyeM(), through.minus(eyeM()).normalised())
                : new Ray(through.plus(towardsEye().times(distanceM)), towardsEye().times(-1));
    }

    /** Goes round the target. */
    public Camera orbited(double byYawRad, double byPitchRad) {
        return new Camera(targetM, yawRad + byYawRad, pitchRad + byPitchRad, distanceM, lens);
    }

    /** Moves target and eye together so that what is looked at follows the pointer, pixels right and down. */
    public Camera panned(double byXPx, double byYPx, Frame frame) {
        double metres = heightM() / frame.heightPx();
        return new Camera(targetM.minus(right().times(byXPx * metres)).plus(up().times(byYPx * metres)), yawRad,
                pitchRad, distanceM, lens);
    }

    /** Comes nearer (below 1) or goes away (above 1). */
    public Camera zoomed(double factor) {
        return new Camera(targetM, yawRad, pitchRad, Math.max(0.01, Math.min(100, distanceM * factor)), lens);
    }

    public Camera with(Lens other) {
        return new Camera(targetM, yawRad, pitchRad, distanceM, other);
    }

    /** The same direction, but so near or far and so placed that a box just fills the picture within the margins. */
    public Camera fitted(Bounds boxM, Frame frame, Margins margins) {
        Camera camera = this;
        double width = Math.max(0.1, 1 - (margins.left() + margins.right()) / frame.widthUnits());
        double height = Math.max(0.1, 1 - (margins.top() + margins.bottom()) / frame.heightUnits());
        double middleX = (margins.left() / frame.widthUnits() + width / 2) * frame.widthPx();
        double middleY = (margins.top() / frame.heightUnits() + height / 2) * frame.heightPx();
        for (int round = 0; round < FITTING_ROUNDS; round++) {
            double[] box = camera.extent(boxM, frame);
            camera = camera.panned(middleX - (box[0] + box[1]) / 2, middleY - (box[2] + box[3]) / 2, frame);
            double share = Math.max((box[1] - box[0]) / (width * frame.widthPx()),
                    (box[3] - box[2]) / (height * frame.heightPx()));
            camera = camera.zoomed(share);
        }
        return camera;
    }

    /** Left, right, top and bottom of a box in the picture, pixels. */
    private double[] extent(Bounds boxM, Frame frame) {
        double[] extent = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
        for (int n = 0; n < 8; n++) {
            Vec3 corner = new Vec3((n & 1) == 0 ? boxM.low().x() : boxM.high().x(),
                    (n & 2) == 0 ? boxM.low().y() : boxM.high().y(), (n & 4) == 0 ? boxM.low().z() : boxM.high().z());
            Spot spot = spot(corner, frame);
            extent[0] = Math.min(extent[0], spot.xPx());
            extent[1] = Math.max(extent[1], spot.xPx());
            extent[2] = Math.min(extent[2], spot.yPx());
            extent[3] = Math.max(extent[3], spot.yPx());
        }
        return extent;
    }
}
