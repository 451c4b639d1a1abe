package slackwater.analysis;

import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;

/**
 * The water close to bed and rock, where waste settles and sand moves.
 *
 * @param waterM3 water within 6 cm of the bed or of rock
 * @param stillM3 how much of it is expected to stand still: the sum over its cells of probability times volume
 * @param strongM3 how much of it moves faster on average than any coral is kept in
 */
public record BedAndRock(double waterM3, double stillM3, double strongM3) {
    /** Close means within this; a working definition, no source. */
    private static final double CLOSE_M = 0.06;
    /** The upper limit of the small-polyp group: common practice, no source. */
    private static final double STRONG_M_PER_S = 0.50;

    /** Reads the flow of a tank whose still water is known. */
    public static BedAndRock of(Scenario scenario, FlowStatistics flow, StillWater still) {
        Grid grid = flow.grid();
        int close = 0;
        int strong = 0;
        double standing = 0;
        for (int cell = 0; cell < grid.cells(); cell++) {
            if (flow.fluid()[cell] && isClose(scenario, grid.centreM(cell))) {
                close++;
                strong += flow.meanSpeed()[cell] > STRONG_M_PER_S ? 1 : 0;
                standing += still.probability()[cell];
            }
        }
        double cellM3 = grid.cellVolumeM3();
        return new BedAndRock(close * cellM3, standing * cellM3, strong * cellM3);
    }

    private static boolean isClose(Scenario scenario, Vec3 point) {
        return point.z() < scenario.tank().sandDepthM() + CLOSE_M
                || scenario.rocks().stream().anyMatch(rock -> rock.solid().signedDistanceM(point) < CLOSE_M);
    }
}
