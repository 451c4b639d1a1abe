package slackwater.analysis;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the doubt of the whole tank rests on.
 *
 * @param companionCellM edge of the cells of the companion; empty where only one grid was computed
 * @param typicalFraction what the size of the cells does to the speed of a typical place, as a share of it
 * @param companionBiasFraction mean speed of the whole tank on the companion over that of the run, less 1
 * @param pumpFraction how far the pumps may be off together, as a share, 95 %
 * @param grid what to know about the cells, in sentences
 * @param pumps what to know about the pumps, in sentences
 */
public record Confidence(OptionalDouble companionCellM, OptionalDouble typicalFraction,
                         OptionalDouble companionBiasFraction, double pumpFraction, List<String> grid,
                         List<String> pumps) {
}
