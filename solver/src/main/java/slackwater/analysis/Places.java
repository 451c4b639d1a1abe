package slackwater.analysis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/** Places in words, seen from before the front pane: thirds of the tank, and the rock close by. */
final class Places {
    private static final double MOST = 0.6;
    private static final double CLOSE_M = 0.05;

    private final Scenario scenario;

    Places(Scenario scenario) {
        this.scenario = scenario;
    }

    /** A rock's name as it stands in a sentence. */
    static String theRock(String name) {
        return name.toLowerCase(Locale.ROOT).startsWith("the ") ? name : "the " + name;
    }

    /** The place of a single point. */
    String of(Vec3 point) {
        return of(List.of(point));
    }

    /**
     * The place of a region: for each direction the third of the tank that holds most of it, if one does; where at
     * least a quarter of it lies within 5 cm of a rock, that rock is named.
     *
     * @param points points spread evenly over the region; at least one
     */
    String of(List<Vec3> points) {
        Vec3 centre = points.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / points.size());
        String rock = closeRock(points).map(near -> ", " + beside(near, centre)).orElse("");
        return height(points) + " " + level(points) + rock;
    }

    private String height(List<Vec3> points) {
        double bottom = scenario.tank().sandDepthM();
        double depth = scenario.tank().waterLevelM() - bottom;
        return mostly(points, point -> (point.z() - bottom) / depth)
                .map(List.of("low", "half-way up", "near the surface")::get).orElse("from top to bottom");
    }

    private String level(List<Vec3> points) {
        Vec3 inside = scenario.tank().insideM();
        Optional<String> side = mostly(points, point -> point.x() / inside.x()).map(List.of("left", "", "right")::get);
        Optional<String> face = mostly(points, point -> point.y() / inside.y()).map(List.of("front", "", "back")::get);
        if (side.isEmpty()) {
            return face.map(name -> name.isEmpty() ? "along the middle" : "along the " + name)
                    .orElse("all over the tank");
        }
        if (face.orElse("").isEmpty()) {
            return side.get().isEmpty() ? "in the middle" : "on the " + side.get();
        }
        return ("at the " + face.get() + " " + side.get()).strip();
    }

    /** The third, 0 to 2, that holds most of the points; empty where none does. */
    private static Optional<Integer> mostly(List<Vec3> points, ToDoubleFunction<Vec3> fraction) {
        int[] counts = new int[3];
        points.forEach(point -> counts[third(fraction.applyAsDouble(point))]++);
        for (int third = 0; third < counts.length; third++) {
            if (counts[third] >= MOST * points.size()) {
                return Optional.of(third);
            }
        }
        return Optional.empty();
    }

    private static int third(double fraction) {
        return Math.max(0, Math.min(2, (int) Math.floor(fraction * 3)));
    }

    private Optional<Rock> closeRock(List<Vec3> points) {
        Optional<Rock> closest = Optional.empty();
        long most = Math.max(1, points.size() / 4);
        for (Rock rock : scenario.rocks()) {
            long close = points.stream().filter(point -> rock.solid().signedDistanceM(point) < CLOSE_M).count();
            if (close >= most) {
                most = close + 1;
                closest = Optional.of(rock);
            }
        }
        return closest;
    }

    /** Where a point is as seen from a rock, along the axis on which it is furthest out for the rock's size. */
    private static String beside(Rock rock, Vec3 point) {
        Bounds bounds = rock.solid().bounds();
        Vec3 off = point.minus(bounds.centre());
        Vec3 size = bounds.size();
        double x = off.x() / size.x();
        double y = off.y() / size.y();
        double z = off.z() / size.z();
        String name = theRock(rock.name());
        double greatest = Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
        if (greatest < 0.25) {
            return "around " + name;
        }
        if (greatest == Math.abs(y)) {
            return (y > 0 ? "behind " : "before ") + name;
        }
        if (greatest == Math.abs(x)) {
            return (x > 0 ? "right of " : "left of ") + name;
        }
        return (z > 0 ? "above " : "under ") + name;
    }
}
