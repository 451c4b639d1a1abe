package slackwater.viewer.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.geometry.Bounds;
import slackwater.geometry.Solid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.camera.Ray;

/** What a line of sight meets: pumps, corals and rocks, then the water. */
public final class Pick {
    /** A small thing can be hit at least this far about its middle. */
    private static final double LEAST_REACH_M = 0.022;
    private static final int MARCH_STEPS = 400;
    private static final int HALVINGS = 40;
    /** A point before a surface is this far off it: the water over it, not the wall itself. */
    private static final double OFF_SURFACE_M = 0.015;

    private final Scenario scenario;
    private final Ray ray;

    private Pick(Scenario scenario, Ray ray) {
        this.scenario = scenario;
        this.ray = ray;
    }

    /** What was hit, and how far along the line, metres. */
    public record Hit(Thing thing, double distanceM) {
    }

    /** The nearest thing on the line of sight. */
    public static Optional<Hit> thing(Scenario scenario, Ray ray) {
        return new Pick(scenario, ray).nearest();
    }

    /** How far along a line a sphere is met first, metres; from within, 0. */
    public static OptionalDouble sphere(Ray ray, Vec3 centreM, double radiusM) {
        Vec3 to = centreM.minus(ray.fromM());
        double along = to.dot(ray.direction());
        double beside = to.dot(to) - along * along;
        double half = radiusM * radiusM - beside;
        if (half < 0 || along + Math.sqrt(half) < 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Math.max(0, along - Math.sqrt(half)));
    }

    /** Where along a line a box is entered and left, metres; empty where it is missed or lies behind. */
    public static Optional<double[]> box(Ray ray, Bounds box) {
        double enter = 0;
        double leave = Double.POSITIVE_INFINITY;
        double[][] axes = {{ray.fromM().x(), ray.direction().x(), box.low().x(), box.high().x()},
            {ray.fromM().y(), ray.direction().y(), box.low().y(), box.high().y()},
            {ray.fromM().z(), ray.direction().z(), box.low().z(), box.high().z()}};
        for (double[] axis : axes) {
            if (axis[1] == 0) {
                if (axis[0] < axis[2] || axis[0] > axis[3]) {
                    return Optional.empty();
                }
                continue;
            }
            double one = (axis[2] - axis[0]) / axis[1];
            double other = (axis[3] - axis[0]) / axis[1];
            enter = Math.max(enter, Math.min(one, other));
            leave = Math.min(leave, Math.max(one, other));
        }
        return enter <= leave ? Optional.of(new double[] {enter, leave}) : Optional.empty();
    }

    /**
     * How far along a line a solid is met first, metres. Only the sign of the distance is trusted, so parts thinner
     * than a 400th of the solid's extent along the line can be missed.
     */
    public static OptionalDouble solid(Ray ray, Solid solid) {
        Optional<double[]> span = box(ray, solid.bounds());
        if (span.isEmpty()) {
            return OptionalDouble.empty();
        }
        double from = span.get()[0];
        double step = (span.get()[1] - from) / MARCH_STEPS;
        for (int n = 0; n <= MARCH_STEPS; n++) {
            if (solid.contains(ray.at(from + n * step))) {
                return OptionalDouble.of(n == 0 ? from : edge(ray, solid, from + (n - 1) * step, from + n * step));
            }
        }
        return OptionalDouble.empty();
    }

    private static double edge(Ray ray, Solid solid, double outside, double inside) {
        double low = outside;
        double high = inside;
        for (int n = 0; n < HALVINGS; n++) {
            double middle = (low + high) / 2;
            if (solid.contains(ray.at(middle))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /**
     * The point of the water that a click means: over the rock or the sand where the line of sight meets one, else
     * where it is half way through the water. Empty where it misses the water.
     */
    public static Optional<Vec3> water(Scenario scenario, Ray ray) {
        Vec3 inside = scenario.tank().insideM();
        Bounds water = new Bounds(new Vec3(0, 0, scenario.tank().sandDepthM()),
                new Vec3(inside.x(), inside.y(), scenario.tank().waterLevelM()));
        return box(ray, water).flatMap(span -> {
            OptionalDouble rock = scenario.rocks().stream().map(one -> solid(ray, one.solid()))
                    .filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble).min();
            if (rock.isPresent() && rock.getAsDouble() < span[1]) {
                return rock.getAsDouble() <= span[0] ? Optional.empty()
                        : Optional.of(ray.at(Math.max(span[0], rock.getAsDouble() - OFF_SURFACE_M)));
            }
            boolean sand = Math.abs(ray.at(span[1]).z() - water.low().z()) < 1e-9 && ray.direction().z() < 0;
            return Optional.of(ray.at(sand ? Math.max(span[0], span[1] - OFF_SURFACE_M) : (span[0] + span[1]) / 2));
        });
    }

    /** The sand or the top of a rock below a place, metres. */
    public static Vec3 ground(Scenario scenario, Vec3 placeM) {
        double sand = scenario.tank().sandDepthM();
        double reach = placeM.z() - sand;
        if (reach <= 0) {
            return new Vec3(placeM.x(), placeM.y(), sand);
        }
        Ray down = new Ray(placeM, new Vec3(0, 0, -1));
        double fall = scenario.rocks().stream().map(rock -> solid(down, rock.solid()))
                .filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble).min().orElse(reach);
        return new Vec3(placeM.x(), placeM.y(), placeM.z() - Math.min(fall, reach));
    }

    private Optional<Hit> nearest() {
        List<Hit> hits = new ArrayList<>();
        for (Thing thing : Thing.all(scenario)) {
            distance(thing).ifPresent(distance -> hits.add(new Hit(thing, distance)));
        }
        // Something small in front of a rock it touches is meant, not the rock.
        return hits.stream().min(Comparator.comparingDouble(
                hit -> hit.distanceM() - (hit.thing().kind() == Thing.Kind.ROCK ? 0 : LEAST_REACH_M)));
    }

    private OptionalDouble distance(Thing thing) {
        return switch (thing.kind()) {
            case PUMP -> sphere(ray, thing.atM(scenario), Math.max(LEAST_REACH_M,
                    0.7 * Math.sqrt(scenario.pumps().get(thing.index()).outlet().areaM2())));
            case RETURN -> sphere(ray, thing.atM(scenario), LEAST_REACH_M);
            case CORAL -> sphere(ray, thing.atM(scenario), Math.max(LEAST_REACH_M,
                    scenario.corals().get(thing.index()).sizeM() * 0.4));
            case ROCK -> solid(ray, scenario.rocks().get(thing.index()).solid());
        };
    }
}
