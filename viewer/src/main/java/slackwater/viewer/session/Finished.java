package slackwater.viewer.session;

import java.util.List;
import slackwater.analysis.CoralReading;
import slackwater.viewer.scene.Water;

/**
 * What a finished run found.
 *
 * @param water the averaged flow, how still it is, and whether it had settled
 * @param corals one reading a coral, in the order of the scenario
 */
public record Finished(Water water, List<CoralReading> corals) {
}
