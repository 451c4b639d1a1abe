package slackwater.analysis;

import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;

/**
 * One connected stretch of still water.
 *
 * @param volumeM3 its volume
 * @param shareFraction its share of the whole water, 0..1
 * @param centreM the middle of its volume, metres
 * @param bounds the box that holds its cells, metres
 * @param meanMPerS mean speed within it
 * @param place where it is, in words
 */
public record StillRegion(double volumeM3, double shareFraction, Vec3 centreM, Bounds bounds, double meanMPerS,
                          String place) {
}
