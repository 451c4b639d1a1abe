package slackwater.viewer.shape;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Vec3;

/** Bodies of revolution: cylinders, cones and jets. */
public final class Turned {
    private static final int LEAST_ROUND = 24;
    /** Thinner than this, half as many do. */
    private static final double THIN_M = 0.01;

    private Turned() {
    }

    /** A point of an outline: distance along the axis and radius there, metres. */
    public record Ring(double alongM, double radiusM) {
    }

    /** A round cylinder with flat ends. */
    public static Surface cylinder(Vec3 base, Vec3 direction, double heightM, double radiusM, double edgeM) {
        int rows = Math.max(1, (int) Math.ceil(heightM / edgeM));
        List<Ring> side = new ArrayList<>();
        for (int row = 0; row <= rows; row++) {
            side.add(new Ring(heightM * row / rows, radiusM));
        }
        return Surface.joined(List.of(
                turn(base, direction, List.of(new Ring(0, 0), new Ring(0, radiusM)), edgeM),
                turn(base, direction, side, edgeM),
                turn(base, direction, List.of(new Ring(heightM, radiusM), new Ring(heightM, 0)), edgeM)));
    }

    /** An outline turned about an axis; the outline runs so that the body lies on its left. */
    public static Surface turn(Vec3 base, Vec3 direction, List<Ring> outline, double edgeM) {
        double greatest = outline.stream().mapToDouble(Ring::radiusM).max().orElse(0);
        int least = greatest < THIN_M ? LEAST_ROUND / 2 : LEAST_ROUND;
        int columns = Math.max(least, (int) Math.ceil(2 * Math.PI * greatest / edgeM));
        Vec3 across = across(direction);
        Vec3 third = direction.cross(across);
        Net net = new Net(columns, outline.size() - 1);
        for (int row = 0; row < outline.size(); row++) {
            Ring ring = outline.get(row);
            Ring before = outline.get(Math.max(0, row - 1));
            Ring after = outline.get(Math.min(outline.size() - 1, row + 1));
            double along = after.alongM() - before.alongM();
            double out = after.radiusM() - before.radiusM();
            for (int column = 0; column <= columns; column++) {
                double angle = 2 * Math.PI * column / columns;
                Vec3 ray = across.times(Math.cos(angle)).plus(third.times(Math.sin(angle)));
                net.add(base.plus(direction.times(ring.alongM())).plus(ray.times(ring.radiusM())),
                        ray.times(along).minus(direction.times(out)).normalised());
            }
        }
        return net.surface();
    }

    /** A unit vector square to a direction. */
    public static Vec3 across(Vec3 direction) {
        Vec3 other = Math.abs(direction.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
        return direction.cross(other).normalised();
    }
}
