package slackwater.simulation;

import slackwater.field.FlowObserver;

/** Who is told of a run while it goes on: how far it is, and what the averaged water looks like. */
public record Onlookers(Progress progress, FlowObserver observer) {
    public static final Onlookers NOBODY = new Onlookers(Progress.SILENT, FlowObserver.NONE);

    /** Only somebody who wants to know how far the run is. */
    public static Onlookers of(Progress progress) {
        return new Onlookers(progress, FlowObserver.NONE);
    }
}
