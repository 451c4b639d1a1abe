package slackwater.viewer.shape;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Vec3;

/**
 * The room that a free jet fills out to half of its middle speed: as wide as the outlet at first, then
 * r = S x with S = 0.094 (Hussein, Capp and George 1994; others 0.086 to 0.102).
 *
 * @param atM middle of the outlet, metres
 * @param aim unit vector along the jet
 * @param across unit vector along the width of the outlet, square to the aim
 * @param halfWidthM half the outlet's width, metres
 * @param halfHeightM half its height, metres
 */
public record JetCone(Vec3 atM, Vec3 aim, Vec3 across, double halfWidthM, double halfHeightM) {
    public static final double SPREAD = 0.094;
    private static final int ROUND = 32;
    private static final int ROWS = 24;

    /** Half the width at a distance from the outlet, metres, along {@code across}. */
    public double halfWidthAtM(double distanceM) {
        return Math.max(halfWidthM, SPREAD * distanceM);
    }

    private double halfHeightAtM(double distanceM) {
        return Math.max(halfHeightM, SPREAD * distanceM);
    }

    /** The open mantle from the outlet to a distance from it. */
    public Surface surface(double lengthM) {
        Net net = new Net(ROUND, ROWS);
        for (int row = 0; row <= ROWS; row++) {
            for (int column = 0; column <= ROUND; column++) {
                double angle = 2 * Math.PI * column / ROUND;
                net.add(rim(lengthM * row / ROWS, angle), ray(angle, 1, 1).normalised());
            }
        }
        return net.surface();
    }

    /** The closed edge at a distance, metres. */
    public List<Vec3> rim(double distanceM) {
        List<Vec3> rim = new ArrayList<>();
        for (int n = 0; n <= ROUND; n++) {
            rim.add(rim(distanceM, 2 * Math.PI * n / ROUND));
        }
        return rim;
    }

    private Vec3 rim(double distanceM, double angle) {
        return atM.plus(aim.times(distanceM)).plus(ray(angle, halfWidthAtM(distanceM), halfHeightAtM(distanceM)));
    }

    private Vec3 ray(double angle, double width, double height) {
        return across.times(width * Math.cos(angle)).plus(aim.cross(across).times(height * Math.sin(angle)));
    }

    /** The distance from a point inside a box to its wall along a direction, metres. */
    public static double reachM(Vec3 fromM, Vec3 direction, Vec3 insideM) {
        double reach = Double.MAX_VALUE;
        for (Axis axis : Axis.values()) {
            double along = axis.of(direction);
            if (Math.abs(along) > 1e-9) {
                double wall = along > 0 ? axis.of(insideM) : 0;
                reach = Math.min(reach, (wall - axis.of(fromM)) / along);
            }
        }
        return Math.max(0, reach);
    }
}
