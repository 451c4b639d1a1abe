package slackwater.viewer.session;

import slackwater.analysis.Assessment;
import slackwater.field.FlowStatistics;

/** What a finished run found: the flow, and what it means. */
public record Finished(FlowStatistics flow, Assessment assessment) {
}
