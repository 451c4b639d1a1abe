package slackwater.analysis;

import java.util.Optional;
import slackwater.detritus.Litter;
import slackwater.field.FlowStatistics;

/**
 * What else is known that bears on how sure the readings are.
 *
 * @param companion the same tank on coarser cells, to see how much the cells matter; empty if there is none
 * @param remark one sentence on the companion where there is something to say, such as why there is none; may be empty
 * @param pumpFraction how far the outputs of all pumps and the return may be off together, as a share, 95 %; 0..0.6
 * @param litter what became of sand, food and waste; empty if that was not tried
 */
public record Evidence(Optional<FlowStatistics> companion, String remark, double pumpFraction,
                       Optional<Litter> litter) {
    /** One grid, and the pumps taken at their word. */
    public static final Evidence NONE = new Evidence(Optional.empty(), "", 0);

    /** Without any grain in the water. */
    public Evidence(Optional<FlowStatistics> companion, String remark, double pumpFraction) {
        this(companion, remark, pumpFraction, Optional.empty());
    }

    /** The same with what became of grains. */
    public Evidence with(Optional<Litter> grains) {
        return new Evidence(companion, remark, pumpFraction, grains);
    }
}
