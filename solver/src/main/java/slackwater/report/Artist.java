package slackwater.report;

import java.util.List;
import slackwater.field.FlowStatistics;
import slackwater.result.FlowResult;

/** Draws a tank in space for its report, where it can. */
public interface Artist {
    /** Draws nothing: the solver has no graphics of its own. */
    Artist NONE = (result, flow) -> new Artwork(List.of(),
            "No views of the tank in space: the solver was started without the viewer.");

    /** Pictures of a result, or none and why; never throws because graphics are missing. */
    Artwork draw(FlowResult result, FlowStatistics flow);
}
