package slackwater.viewer.shape;

import slackwater.geometry.Vec3;

/** What stands in the way of a look. */
public final class Sight {
    private Sight() {
    }

    /** Whether a surface, seen from either side, crosses the straight line between two points, metres. */
    public static boolean isBlocked(Surface surface, Vec3 fromM, Vec3 toM) {
        double[] from = {fromM.x(), fromM.y(), fromM.z()};
        double[] way = {toM.x() - fromM.x(), toM.y() - fromM.y(), toM.z() - fromM.z()};
        for (int first = 0; first < surface.corners().length; first += 3) {
            if (crosses(surface, first, from, way)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Moeller and Trumbore 1997, "Fast, minimum storage ray/triangle intersection", Journal of Graphics Tools 2:21,
     * with the line's end as a limit.
     */
    private static boolean crosses(Surface surface, int first, double[] from, double[] way) {
        float[] points = surface.points();
        int a = 3 * surface.corners()[first];
        int b = 3 * surface.corners()[first + 1];
        int c = 3 * surface.corners()[first + 2];
        double ux = points[b] - points[a];
        double uy = points[b + 1] - points[a + 1];
        double uz = points[b + 2] - points[a + 2];
        double vx = points[c] - points[a];
        double vy = points[c + 1] - points[a + 1];
        double vz = points[c + 2] - points[a + 2];
        double px = way[1] * vz - way[2] * vy;
        double py = way[2] * vx - way[0] * vz;
        double pz = way[0] * vy - way[1] * vx;
        double volume = ux * px + uy * py + uz * pz;
        if (volume == 0) {
            return false;
        }
        double tx = from[0] - points[a];
        double ty = from[1] - points[a + 1];
        double tz = from[2] - points[a + 2];
        double alongFirst = (tx * px + ty * py + tz * pz) / volume;
        if (alongFirst < 0 || alongFirst > 1) {
            return false;
        }
        double qx = ty * uz - tz * uy;
        double qy = tz * ux - tx * uz;
        double qz = tx * uy - ty * ux;
        double alongSecond = (way[0] * qx + way[1] * qy + way[2] * qz) / volume;
        double share = (vx * qx + vy * qy + vz * qz) / volume;
        return alongSecond >= 0 && alongFirst + alongSecond <= 1 && share > 0 && share < 1;
    }
}
