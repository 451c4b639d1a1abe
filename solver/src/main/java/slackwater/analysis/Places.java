package slackwater.analysis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/** Places in words, seen from before the front pane: thirds of the tank, and the rock close by. */
final class Places {
    private static final double SPANNING = 0.6;
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
        return of(new Bounds(point, point), point, List.of(point));
    }

    /**
     * The place of a region.
     *
     * @param bounds the box that holds it
     * @param centre the middle of its volume
     * @param points some points of it: where at least a quarter lie within 5 cm of a rock, that rock is named
     */
    String of(Bounds bounds, Vec3 centre, List<Vec3> points) {
        String rock = closeRock(points).map(near -> ", " + beside(near, centre)).orElse("");
        return height(bounds, centre) + " " + level(bounds, centre) + rock;
    }

    private String height(Bounds bounds, Vec3 centre) {
        double bottom = scenario.tank().sandDepthM();
        double depth = scenario.tank().waterLevelM() - bottom;
        if (bounds.size().z() > SPANNING * depth) {
            return "from top to bottom";
        }
        return List.of("low", "half-way up", "near the surface").get(third((centre.z() - bottom) / depth));
    }

    private String level(Bounds bounds, Vec3 centre) {
        Vec3 inside = scenario.tank().insideM();
        boolean wide = bounds.size().x() > SPANNING * inside.x();
        boolean deep = bounds.size().y() > SPANNING * inside.y();
        String side = List.of("left", "", "right").get(third(centre.x() / inside.x()));
        String face = List.of("front", "", "back").get(third(centre.y() / inside.y()));
        if (wide && deep) {
            return "all over the tank";
        }
        if (wide) {
            return face.isEmpty() ? "along the middle" : "along the " + face;
        }
        if (deep || face.isEmpty()) {
            return side.isEmpty() ? "in the middle" : "on the " + side;
        }
        return ("at the " + face + " " + side).strip();
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
