package slackwater.viewer.edit;

import java.util.Optional;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.camera.Ray;

/**
 * A thing that hangs on the pointer: it moves in a plane through where it was taken, or turns its aim towards the
 * pointer. Everything is worked out from the start of the drag, so coming back to the start is no change.
 *
 * @param start the layout when it was taken
 * @param thing what was taken
 * @param grip by what
 * @param plane the normal of the plane that it moves in, of length 1
 * @param taken where the pointer met that plane, metres
 */
public record Drag(Scenario start, Thing thing, Grip grip, Vec3 plane, Vec3 taken) {
    /** Distance of an aim's handle from the outlet, metres. */
    public static final double HANDLE_M = 0.14;
    /** Pumps this near to a pane, or nearer, are dragged along it. */
    private static final double NEAR_PANE_M = 0.12;
    private static final double GRAZING = 0.15;

    /** By what a thing is held. */
    public enum Grip { BODY, AIM }

    /** How it is to move. */
    public enum Way { BY_ITSELF, LEVEL, FACING }

    /**
     * Takes a thing.
     *
     * @param ray the line of sight at the pointer
     * @param way along the nearest pane for what hangs at one and level for what stands (by itself), level, or in the
     *     plane that faces the eye
     */
    public static Drag of(Scenario scenario, Thing thing, Grip grip, Ray ray, Way way) {
        Vec3 at = thing.atM(scenario);
        Vec3 normal = normal(scenario, thing, ray, way);
        return new Drag(scenario, thing, grip, normal, meet(ray, at, normal).orElse(at));
    }

    /** The layout with the thing where the pointer has it now. */
    public Scenario at(Ray ray, Steps steps) {
        return grip == Grip.AIM ? aimed(ray, steps) : moved(ray, steps);
    }

    private Scenario moved(Ray ray, Steps steps) {
        Vec3 at = thing.atM(start);
        return meet(ray, at, plane).map(met -> {
            Vec3 by = met.minus(taken);
            Vec3 along = by.minus(plane.times(by.dot(plane)));
            Vec3 to = steps.place(at.plus(along));
            // What the plane holds fixed stays to the last digit.
            Vec3 kept = new Vec3(fixed(plane.x(), at.x(), to.x()), fixed(plane.y(), at.y(), to.y()),
                    fixed(plane.z(), at.z(), to.z()));
            return along.length() < steps.lengthM() / 2 ? start : Edits.moved(start, thing, kept);
        }).orElse(start);
    }

    private static double fixed(double normal, double was, double now) {
        return Math.abs(normal) > 1 - 1e-9 ? was : now;
    }

    private Scenario aimed(Ray ray, Steps steps) {
        Vec3 at = thing.atM(start);
        Vec3 towards = towards(ray, at).minus(at);
        if (towards.length() < 1e-6) {
            return start;
        }
        Vec3 aim = towards.normalised();
        double yaw = Math.abs(aim.z()) > 1 - 1e-9 ? yaw(start, thing) : Math.atan2(aim.y(), aim.x());
        return Edits.aimed(start, thing, steps.angle(yaw), steps.angle(Math.asin(aim.z())));
    }

    /**
     * The point of the sphere about the outlet on which the handle lies that the line of sight passes nearest to: on
     * the side where the handle was.
     */
    private Vec3 towards(Ray ray, Vec3 at) {
        Vec3 to = at.minus(ray.fromM());
        double along = to.dot(ray.direction());
        Vec3 foot = ray.at(along);
        double beside = foot.minus(at).length();
        if (beside >= HANDLE_M) {
            return foot;
        }
        double half = Math.sqrt(HANDLE_M * HANDLE_M - beside * beside);
        boolean far = Vec3.aim(yaw(start, thing), pitch(start, thing)).dot(ray.direction()) > 0;
        return ray.at(along + (far ? half : -half));
    }

    /** Where the handle of an aim lies, metres. */
    public static Vec3 handleM(Scenario scenario, Thing thing) {
        return thing.atM(scenario).plus(Vec3.aim(yaw(scenario, thing), pitch(scenario, thing)).times(HANDLE_M));
    }

    /** Aim about the vertical, radians; 0 for what has no aim. */
    public static double yaw(Scenario scenario, Thing thing) {
        return switch (thing.kind()) {
            case PUMP -> scenario.pumps().get(thing.index()).yawRad();
            case RETURN -> scenario.returnLine().orElseThrow().yawRad();
            default -> 0;
        };
    }

    /** Aim above the level, radians; 0 for what has no aim. */
    public static double pitch(Scenario scenario, Thing thing) {
        return switch (thing.kind()) {
            case PUMP -> scenario.pumps().get(thing.index()).pitchRad();
            case RETURN -> scenario.returnLine().orElseThrow().pitchRad();
            default -> 0;
        };
    }

    private static Vec3 normal(Scenario scenario, Thing thing, Ray ray, Way way) {
        Vec3 facing = ray.direction().times(-1);
        Vec3 up = new Vec3(0, 0, 1);
        Vec3 wished = switch (way) {
            case FACING -> facing;
            case LEVEL -> up;
            case BY_ITSELF -> thing.aims() ? pane(scenario, thing).orElse(facing) : up;
        };
        // A plane seen from its edge would throw the thing about.
        return Math.abs(wished.dot(ray.direction())) < GRAZING ? facing : wished;
    }

    /** The normal of the nearest pane, where one is near. */
    private static Optional<Vec3> pane(Scenario scenario, Thing thing) {
        Vec3 at = thing.atM(scenario);
        Vec3 inside = scenario.tank().insideM();
        double side = Math.min(at.x(), inside.x() - at.x());
        double front = Math.min(at.y(), inside.y() - at.y());
        if (Math.min(side, front) > NEAR_PANE_M) {
            return Optional.empty();
        }
        return Optional.of(side <= front ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0));
    }

    /** Where a line meets the plane through a point; empty where it runs along it or away from it. */
    private static Optional<Vec3> meet(Ray ray, Vec3 point, Vec3 normal) {
        double slope = ray.direction().dot(normal);
        double distance = point.minus(ray.fromM()).dot(normal) / slope;
        return Math.abs(slope) < 1e-9 || !(distance > 0) ? Optional.empty() : Optional.of(ray.at(distance));
    }
}
