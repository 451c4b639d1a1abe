package slackwater.viewer.live;

import slackwater.detritus.Grain;
import slackwater.detritus.Scene;

/**
 * Grains in the water under way.
 *
 * @param kind what all of them are
 * @param scene where each is
 */
public record Sown(Grain kind, Scene scene) {
}
