package slackwater.field;

import java.util.List;
import slackwater.geometry.Vec3;

/**
 * A place to watch while the water runs.
 *
 * @param name the coral it belongs to
 * @param pointsM the points in the water whose speeds are averaged for one sample, metres; at least one
 * @param limitsMPerS the speeds at which the verdict would change: the run goes on until the reading is clear of them
 */
public record Probe(String name, List<Vec3> pointsM, List<Double> limitsMPerS) {
}
