package slackwater.viewer.live;

import java.util.Optional;
import slackwater.analysis.Assessment;
import slackwater.field.FlowStatistics;
import slackwater.field.Settling;
import slackwater.field.Velocity;
import slackwater.scenario.Scenario;

/**
 * A flow under way as it was at one moment, for a picture. It does not change any more.
 *
 * @param scenario the layout that this water belongs to
 * @param velocity of the water at this moment
 * @param mean what its averages are
 * @param settling how far the averages can be trusted
 * @param waterS water time since the start, seconds
 * @param pace water seconds in a second of the clock
 * @param grains what was let go in it; empty where nothing was
 */
public record Snapshot(Scenario scenario, Velocity velocity, Optional<Mean> mean, Settling settling, double waterS,
                       double pace, Optional<Sown> grains) {
    /** Averages and what they mean for the tank. The same object as long as they are the same. */
    public record Mean(FlowStatistics flow, Assessment assessment) {
    }
}
