package slackwater.scenario;

import java.util.Optional;
import slackwater.geometry.Vec3;

/**
 * A coral to judge.
 *
 * @param atM where it sits, metres
 * @param facing unit vector that points from its base out into the water
 * @param sizeM its diameter, metres
 * @param range the user's own range of speeds instead of the group's
 */
public record Coral(String name, CoralGroup group, Vec3 atM, Vec3 facing, double sizeM, Optional<SpeedRange> range) {
}
