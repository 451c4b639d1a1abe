package slackwater.scenario;

import slackwater.geometry.Vec3;

/**
 * The glass box.
 *
 * @param insideM inner length (x), depth from front to back (y) and height (z), metres
 * @param waterLevelM height of the water surface above the inside of the bottom, metres
 * @param sandDepthM depth of the sand bed, metres; 0 for a bare bottom
 * @param sandGrainM median grain diameter, metres
 */
public record Tank(Vec3 insideM, double waterLevelM, double sandDepthM, double sandGrainM) {
    /** Volume between sand and water line with no rock taken off, cubic metres. */
    public double waterVolumeM3() {
        return insideM.x() * insideM.y() * (waterLevelM - sandDepthM);
    }
}
