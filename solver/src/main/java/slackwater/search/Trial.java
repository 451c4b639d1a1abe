package slackwater.search;

import java.util.List;
import slackwater.scenario.Pump;

/**
 * One run that was made, as the log keeps it.
 *
 * @param key tells trials apart: equal for the same scenario computed in the same way
 * @param stage what it was run for
 * @param way how it was computed, in words: cells, seed, version
 * @param pumps the layout
 * @param outcome what came of it
 * @param wallS how long it took, seconds
 */
public record Trial(String key, Stage stage, String way, List<Pump> pumps, Outcome outcome, double wallS) {
}
