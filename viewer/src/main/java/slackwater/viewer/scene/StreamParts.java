package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.shape.Current;
import slackwater.viewer.shape.Polylines;
import slackwater.viewer.shape.Streamlines;
import slackwater.viewer.shape.Surface;
import slackwater.viewer.shape.Turned;
import slackwater.viewer.shape.Turned.Ring;

/** Streamlines with arrows on them. */
public final class StreamParts {
    private static final int ABOUT_A_PUMP = 6;
    private static final int SCATTERED = 40;
    private static final double LONGEST_TANKS = 0.55;
    private static final double ARROW_EVERY_M = 0.2;
    private static final double WIDTH_UNITS = 1.8;

    private StreamParts() {
    }

    /** Lines from every pump, and through places spread over the water. */
    public static List<Item> of(Scenario scenario, Water water, ColourScale scale) {
        Current current = Current.of(water.flow());
        double longest = LONGEST_TANKS * scenario.tank().insideM().x();
        Polylines lines = new Streamlines(current, longest).through(scattered(current));
        List<Vec3> outlets = new ArrayList<>();
        scenario.pumps().forEach(pump -> outlets.addAll(about(pump)));
        Polylines jets = new Streamlines(current, 2 * longest).from(outlets);
        List<Item> items = new ArrayList<>(drawn(lines, scale));
        items.addAll(drawn(jets, scale));
        return items;
    }

    /** The line through one place, such as one pointed at. */
    public static List<Item> through(Vec3 placeM, Water water, ColourScale scale) {
        double longest = 3 * water.flow().grid().nx() * water.flow().grid().cellSizeM();
        return drawn(new Streamlines(Current.of(water.flow()), longest).through(List.of(placeM)), scale);
    }

    /** Lines coloured by their speed, with arrows. */
    public static List<Item> drawn(Polylines lines, ColourScale scale) {
        if (lines.pointCount() == 0) {
            return List.of();
        }
        Paint paint = Paint.mapped(scale.map());
        List<Item> items = new ArrayList<>();
        items.add(new Strokes(lines, scale.fractions(lines.values()), paint, WIDTH_UNITS, true));
        arrows(lines, scale, paint).ifPresent(items::add);
        return items;
    }

    private static Optional<Item> arrows(Polylines lines, ColourScale scale, Paint paint) {
        List<Surface> heads = new ArrayList<>();
        List<Float> shades = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            double far = ARROW_EVERY_M / 2;
            for (int n = lines.starts()[line] + 1; n < lines.starts()[line + 1]; n++) {
                Vec3 step = point(lines, n).minus(point(lines, n - 1));
                far += step.length();
                if (far >= ARROW_EVERY_M) {
                    far = 0;
                    heads.add(Turned.turn(point(lines, n), step.normalised(), List.of(new Ring(0, 0),
                            new Ring(-0.003, 0.007), new Ring(0.02, 0)), 0.01));
                    shades.add((float) scale.fraction(lines.values()[n]));
                }
            }
        }
        if (heads.isEmpty()) {
            return Optional.empty();
        }
        float[] all = new float[heads.stream().mapToInt(Surface::vertexCount).sum()];
        int from = 0;
        for (int n = 0; n < heads.size(); n++) {
            Arrays.fill(all, from, from + heads.get(n).vertexCount(), shades.get(n));
            from += heads.get(n).vertexCount();
        }
        return Optional.of(new Body(Surface.joined(heads), all, paint.lit(0.35)));
    }

    private static Vec3 point(Polylines lines, int n) {
        return new Vec3(lines.points()[3 * n], lines.points()[3 * n + 1], lines.points()[3 * n + 2]);
    }

    private static List<Vec3> about(Pump pump) {
        double radius = Math.sqrt(pump.outlet().areaM2() / Math.PI) * 0.7;
        Vec3 across = Turned.across(pump.aim());
        Vec3 third = pump.aim().cross(across);
        List<Vec3> ring = new ArrayList<>();
        for (int n = 0; n < ABOUT_A_PUMP; n++) {
            double angle = 2 * Math.PI * n / ABOUT_A_PUMP;
            ring.add(pump.atM().plus(pump.aim().times(0.01)).plus(across.times(radius * Math.cos(angle)))
                    .plus(third.times(radius * Math.sin(angle))));
        }
        return ring;
    }

    /** Places in the water, each the farthest from the ones before of some candidates (best-candidate sampling). */
    private static List<Vec3> scattered(Current current) {
        SplittableRandom random = new SplittableRandom(1);
        Grid grid = current.grid();
        double h = grid.cellSizeM();
        List<Vec3> places = new ArrayList<>();
        for (int n = 0; n < SCATTERED; n++) {
            Vec3 best = Vec3.ZERO;
            double farthest = -1;
            for (int candidate = 0; candidate < 24; candidate++) {
                Vec3 at = new Vec3(random.nextDouble() * grid.nx() * h, random.nextDouble() * grid.ny() * h,
                        random.nextDouble() * grid.nz() * h);
                double near = places.stream().mapToDouble(other -> other.minus(at).length()).min().orElse(1);
                if (near > farthest && current.isWater(at.x(), at.y(), at.z())) {
                    farthest = near;
                    best = at;
                }
            }
            if (farthest >= 0) {
                places.add(best);
            }
        }
        return places;
    }
}
