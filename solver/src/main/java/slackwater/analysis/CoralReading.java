package slackwater.analysis;

import java.util.List;
import slackwater.detritus.Clearance;
import slackwater.scenario.Coral;
import slackwater.scenario.SpeedRange;

/**
 * What the water does at one coral.
 *
 * @param reading the speeds over its disc
 * @param doubt how sure the mean is, part by part
 * @param range the mean speeds that it wants
 * @param verdict of speed and clearance, the worse: never PASS where a limit lies within the doubt, the run had not
 *     settled, or it is not sure that the coral is cleared
 * @param sentence the reading in words, with the reason where there is one to see
 * @param clearances how fast food and sand leave it; empty if that was not tried
 */
public record CoralReading(Coral coral, Reading reading, Doubt doubt, SpeedRange range, Verdict verdict,
                           String sentence, List<Clearance> clearances) {
    /** Judged by the speed alone. */
    public CoralReading(Coral coral, Reading reading, Doubt doubt, SpeedRange range, Verdict verdict,
                        String sentence) {
        this(coral, reading, doubt, range, verdict, sentence, List.of());
    }

    /** What its clearances alone come to; NONE if that was not tried. */
    public Verdict clearing() {
        return ClearanceWords.verdict(coral, clearances);
    }

    /** Where the true mean speed lies, 95 %. */
    public Interval interval() {
        return Interval.about(reading.meanMPerS(), doubt);
    }
}
