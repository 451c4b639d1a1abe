package slackwater.result;

import java.util.List;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Verdict;
import slackwater.field.Grid;
import slackwater.field.RunQuality;
import slackwater.scenario.Scenario;

/**
 * What result.json keeps of a run, read back; speeds to eight digits.
 *
 * @param scenario what was asked
 * @param scenarioText the same as the user wrote it
 * @param verdict of the whole tank
 * @param summary the verdict in words
 * @param corals one reading a coral, in the order of the scenario
 * @param quality how the run went
 * @param grid the cells it was computed on
 */
public record KeptResult(Scenario scenario, String scenarioText, Verdict verdict, String summary,
                         List<CoralReading> corals, RunQuality quality, Grid grid) {
}
