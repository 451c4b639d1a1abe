package slackwater.analysis;

import slackwater.scenario.Coral;
import slackwater.scenario.SpeedRange;

/**
 * What the water does at one coral.
 *
 * @param reading the speeds over its disc
 * @param doubt how sure the mean is, part by part
 * @param range the mean speeds that it wants
 * @param verdict never PASS where a limit lies within the doubt or the run had not settled
 * @param sentence the reading in words, with the reason where there is one to see
 */
public record CoralReading(Coral coral, Reading reading, Doubt doubt, SpeedRange range, Verdict verdict,
                           String sentence) {
    /** Where the true mean speed lies, 95 %. */
    public Interval interval() {
        return Interval.about(reading.meanMPerS(), doubt);
    }
}
