package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Scenario;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.shape.Surface;
import slackwater.viewer.shape.Turned;
import slackwater.viewer.shape.Turned.Ring;

/** Corals as plates, bushes, domes and caps of their size: signs, not portraits. */
public final class CoralParts {
    private static final int BRANCHES = 19;
    private static final double WIDEST_RAD = Math.toRadians(72);
    private static final double GOLDEN_RAD = Math.PI * (3 - Math.sqrt(5));

    private CoralParts() {
    }

    public static List<Item> of(Scenario scenario) {
        return scenario.corals().stream()
                .map(coral -> (Item) Body.of(surface(coral), Paint.flat(colour(coral.group()), 0.75))).toList();
    }

    /** A coral's sign, of its diameter, on the side that it faces. */
    public static Surface surface(Coral coral) {
        double r = coral.sizeM() / 2;
        return switch (coral.group()) {
            case PLATING -> turned(coral, ring(0, 0), ring(0, 0.22 * r), ring(0.14 * r, 0.3 * r),
                    ring(0.26 * r, 0.97 * r), ring(0.3 * r, r), ring(0.36 * r, r), ring(0.38 * r, 0.95 * r),
                    ring(0.24 * r, 0));
            case LARGE_POLYP -> turned(coral, ring(0, 0), ring(0, 0.8 * r), ring(0.2 * r, r), ring(0.5 * r, 0.9 * r),
                    ring(0.72 * r, 0.65 * r), ring(0.85 * r, 0.3 * r), ring(0.87 * r, 0));
            case SOFT -> turned(coral, ring(0, 0), ring(0, 0.4 * r), ring(0.5 * r, 0.32 * r), ring(0.7 * r, 0.9 * r),
                    ring(0.85 * r, r), ring(r, 0.92 * r), ring(1.04 * r, 0.5 * r), ring(0.96 * r, 0));
            case SMALL_POLYP -> bush(coral, r);
        };
    }

    /** The point above a coral that its label points at, metres. */
    static Vec3 topM(Coral coral) {
        double height = switch (coral.group()) {
            case PLATING -> 0.18;
            case LARGE_POLYP -> 0.42;
            case SOFT -> 0.5;
            case SMALL_POLYP -> 0.45;
        };
        return coral.atM().plus(coral.facing().normalised().times(coral.sizeM() * height));
    }

    /** How high a coral's sign stands before its foot, so far beside its middle, about; metres. */
    static double heightM(Coral coral, double besideM) {
        double r = coral.sizeM() / 2;
        double out = Math.min(1, besideM / r);
        return switch (coral.group()) {
            case PLATING -> (0.25 + 0.13 * out) * r;
            case LARGE_POLYP -> 0.88 * r * Math.sqrt(1 - 0.85 * out * out);
            case SOFT -> r;
            case SMALL_POLYP -> r * Math.sqrt(1 - 0.85 * out * out);
        };
    }

    private static Ring ring(double alongM, double radiusM) {
        return new Ring(alongM, radiusM);
    }

    private static Surface turned(Coral coral, Ring... outline) {
        return Turned.turn(coral.atM(), coral.facing().normalised(), List.of(outline), 0.01);
    }

    /** Branches spread evenly over a cap, each a slim cone. */
    private static Surface bush(Coral coral, double r) {
        Vec3 up = coral.facing().normalised();
        Vec3 across = Turned.across(up);
        Vec3 third = up.cross(across);
        List<Surface> branches = new ArrayList<>();
        for (int n = 0; n < BRANCHES; n++) {
            double tilt = Math.acos(1 - (n + 0.3) / BRANCHES * (1 - Math.cos(WIDEST_RAD)));
            double turn = n * GOLDEN_RAD;
            Vec3 way = up.times(Math.cos(tilt)).plus(across.times(Math.sin(tilt) * Math.cos(turn)))
                    .plus(third.times(Math.sin(tilt) * Math.sin(turn)));
            double length = r * (0.9 + 0.15 * Math.cos(3.1 * n));
            branches.add(Turned.turn(coral.atM(), way, List.of(ring(0, 0.13 * r), ring(0.6 * length, 0.1 * r),
                    ring(0.95 * length, 0.07 * r), ring(length, 0)), 0.01));
        }
        return Surface.joined(branches);
    }

    private static Colour colour(CoralGroup group) {
        return switch (group) {
            case PLATING -> Colour.of(0xB88A78);
            case SMALL_POLYP -> Colour.of(0xC7A8A0);
            case LARGE_POLYP -> Colour.of(0x9C8FB0);
            case SOFT -> Colour.of(0xB9A27A);
        };
    }
}
