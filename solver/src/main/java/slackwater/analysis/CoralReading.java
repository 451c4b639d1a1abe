package slackwater.analysis;

import slackwater.scenario.Coral;
import slackwater.scenario.SpeedRange;

/**
 * What the water does at one coral.
 *
 * @param reading the speeds over its disc
 * @param range the mean speeds that it wants
 * @param verdict never PASS where a limit lies within the margin or the run had not settled
 * @param sentence the reading in words, with the reason where there is one to see
 */
public record CoralReading(Coral coral, Reading reading, SpeedRange range, Verdict verdict, String sentence) {
}
