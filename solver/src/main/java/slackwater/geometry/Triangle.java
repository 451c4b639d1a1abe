package slackwater.geometry;

/** One triangle: its nearest point, and how often a line going straight up crosses it. */
record Triangle(Vec3 a, Vec3 b, Vec3 c) {
    /**
     * Square of the distance from a point. Walks the regions of Ericson, Real-Time Collision Detection (2005), 5.1.5.
     */
    double squaredDistance(Vec3 point) {
        Vec3 offset = point.minus(nearest(point));
        return offset.dot(offset);
    }

    private Vec3 nearest(Vec3 p) {
        Vec3 ab = b.minus(a);
        Vec3 ac = c.minus(a);
        Vec3 ap = p.minus(a);
        double d1 = ab.dot(ap);
        double d2 = ac.dot(ap);
        if (d1 <= 0 && d2 <= 0) {
            return a;
        }
        Vec3 bp = p.minus(b);
        double d3 = ab.dot(bp);
        double d4 = ac.dot(bp);
        if (d3 >= 0 && d4 <= d3) {
            return b;
        }
        double vc = d1 * d4 - d3 * d2;
        if (vc <= 0 && d1 >= 0 && d3 <= 0) {
            return a.plus(ab.times(d1 / (d1 - d3)));
        }
        Vec3 cp = p.minus(c);
        double d5 = ab.dot(cp);
        double d6 = ac.dot(cp);
        if (d6 >= 0 && d5 <= d6) {
            return c;
        }
        double vb = d5 * d2 - d1 * d6;
        if (vb <= 0 && d2 >= 0 && d6 <= 0) {
            return a.plus(ac.times(d2 / (d2 - d6)));
        }
        double va = d3 * d6 - d5 * d4;
        if (va <= 0 && d4 >= d3 && d5 >= d6) {
            return b.plus(c.minus(b).times((d4 - d3) / (d4 - d3 + d5 - d6)));
        }
        double whole = va + vb + vc;
        return a.plus(ab.times(vb / whole)).plus(ac.times(vc / whole));
    }

    /**
     * How a line straight up from the point crosses this triangle: 1 where it leaves through the outer face, -1 where
     * it enters, 0 where it passes by. A line through a shared edge or vertex counts for exactly one of the triangles
     * there, because {@link #side} gives the two of them opposite answers.
     */
    int crossing(Vec3 p) {
        double ofC = side(p, a, b);
        double ofA = side(p, b, c);
        double ofB = side(p, c, a);
        boolean left = leftOf(ofC, a, b);
        if (leftOf(ofA, b, c) != left || leftOf(ofB, c, a) != left) {
            return 0;
        }
        double height = (ofA * a.z() + ofB * b.z() + ofC * c.z()) / (ofA + ofB + ofC);
        if (height <= p.z()) {
            return 0;
        }
        return left ? 1 : -1;
    }

    /** Above 0 where p, seen from above, lies left of the way from one corner to the next; odd in the two corners. */
    private static double side(Vec3 p, Vec3 from, Vec3 to) {
        return (from.x() - p.x()) * (to.y() - p.y()) - (from.y() - p.y()) * (to.x() - p.x());
    }

    /** A point on the line itself is taken to be left of an edge that runs to greater x, or to greater y at equal x. */
    private static boolean leftOf(double side, Vec3 from, Vec3 to) {
        if (side != 0) {
            return side > 0;
        }
        return from.x() < to.x() || from.x() == to.x() && from.y() < to.y();
    }
}
