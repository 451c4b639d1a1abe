package slackwater.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.field.Interpolation;
import slackwater.geometry.Vec3;

/**
 * What the water does at a point, metres per second.
 *
 * @param meanMPerS mean speed
 * @param rmsMPerS root of the mean square of the speed
 * @param velocity mean velocity: where the water goes to
 */
public record PointReading(Vec3 atM, double meanMPerS, double rmsMPerS, Vec3 velocity) {
    /** A mean flow below this share of the mean speed is lost in its own to and fro. */
    private static final double CLEAR_FRACTION = 0.2;
    private static final double SLIGHTLY = Math.sin(Math.toRadians(15));

    /** Reads a flow at a place; empty where there is no water. */
    public static Optional<PointReading> of(FlowStatistics flow, Vec3 placeM) {
        Grid grid = flow.grid();
        boolean within = placeM.x() >= 0 && placeM.y() >= 0 && placeM.z() >= 0
                && placeM.x() <= grid.nx() * grid.cellSizeM() && placeM.y() <= grid.ny() * grid.cellSizeM()
                && placeM.z() <= grid.nz() * grid.cellSizeM();
        OptionalDouble mean = within ? at(flow, flow.meanSpeed(), placeM) : OptionalDouble.empty();
        if (mean.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PointReading(placeM, mean.getAsDouble(),
                at(flow, flow.rmsSpeed(), placeM).orElseThrow(), new Vec3(at(flow, flow.meanU(), placeM).orElseThrow(),
                at(flow, flow.meanV(), placeM).orElseThrow(), at(flow, flow.meanW(), placeM).orElseThrow())));
    }

    private static OptionalDouble at(FlowStatistics flow, float[] values, Vec3 placeM) {
        return new Interpolation(flow.grid(), flow.fluid(), values).at(placeM);
    }

    /** Where the water goes to: "to the right and to the back, slightly up"; or that it goes to and fro. */
    public String direction() {
        if (velocity.length() < CLEAR_FRACTION * meanMPerS || meanMPerS < 1e-4) {
            return "to and fro";
        }
        Vec3 unit = velocity.normalised();
        List<String> ways = new ArrayList<>();
        add(ways, unit.x(), "to the left", "to the right");
        add(ways, unit.y(), "to the front", "to the back");
        add(ways, unit.z(), "down", "up");
        return String.join(", ", ways);
    }

    private static void add(List<String> ways, double part, String below, String above) {
        double slope = Math.abs(part);
        if (slope > SLIGHTLY) {
            ways.add((slope < 0.5 ? "slightly " : "") + (part < 0 ? below : above));
        }
    }

    /** The direction as angles, as a pump's aim is given: "yaw 32°, pitch -5°". */
    public String angles() {
        double yaw = Math.toDegrees(Math.atan2(velocity.y(), velocity.x()));
        double pitch = Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, velocity.normalised().z()))));
        double turned = yaw < -0.5 ? yaw + 360 : Math.abs(yaw);
        return String.format(Locale.ROOT, "yaw %.0f\u00b0, pitch %.0f\u00b0", yaw < 0 ? turned : yaw, pitch + 0.0);
    }
}
