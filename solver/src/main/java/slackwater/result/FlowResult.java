package slackwater.result;

import slackwater.analysis.Assessment;
import slackwater.field.Grid;
import slackwater.field.RunQuality;
import slackwater.scenario.Scenario;

/**
 * The outcome of a run: the one artefact that leaves the solver. The field itself goes beside it.
 *
 * @param provenance what it takes to repeat it
 * @param scenario what was asked
 * @param quality how the run went
 * @param assessment what the water does
 * @param grid the cells it was computed on
 */
public record FlowResult(Provenance provenance, Scenario scenario, RunQuality quality, Assessment assessment,
                         Grid grid) {
}
