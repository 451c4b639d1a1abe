package slackwater.viewer.live;

import slackwater.discretisation.Discretisation;
import slackwater.field.Velocity;

/**
 * How long steps may be while the water still moves as under the layout before: a layout without strong pumps takes
 * long ones, and water that they drove until now would run away with those.
 */
final class Stride {
    /** What the fastest water may pass in a step, cells: half of where a run counts as run away (Mach 0.6). */
    private static final double MOST_CELLS = 0.17;

    private Stride() {
    }

    /** The share of a layout's usual step that the water as it is allows, above 0, at most 1. */
    static double share(Discretisation usual, Velocity now) {
        double squares = 0;
        for (int cell = 0; cell < now.u().length; cell++) {
            squares = Math.max(squares, now.u()[cell] * now.u()[cell] + now.v()[cell] * now.v()[cell]
                    + now.w()[cell] * now.w()[cell]);
        }
        double passedCells = Math.sqrt(squares) * usual.plan().timeStepS() / now.grid().cellSizeM();
        return passedCells > MOST_CELLS ? MOST_CELLS / passedCells : 1;
    }
}
