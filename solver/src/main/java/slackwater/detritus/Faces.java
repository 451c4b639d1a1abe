package slackwater.detritus;

import slackwater.field.Grid;

/**
 * The two faces of a cell across one axis: mean and difference of the flow through them, and of the slopes of that flow
 * along the other two axes, which are called one and other. One for each thread and axis.
 */
final class Faces {
    private final int axis;
    private final int step;
    private final int one;
    private final int other;
    private short[] before = new short[0];
    private short[] after = new short[0];
    private double early;
    private double late;
    private double mean;
    private double change;
    private double meanOfOne;
    private double meanOfOther;
    double changeOfOne;
    double changeOfOther;

    Faces(Grid grid, int axis) {
        int[] steps = {3, 3 * grid.nx(), 3 * grid.nx() * grid.ny()};
        this.axis = axis;
        this.step = steps[axis];
        this.one = steps[axis == 0 ? 1 : 0];
        this.other = steps[axis == 2 ? 1 : 2];
    }

    /** Turns to two frames of the record. */
    void turnTo(short[] frame, short[] next) {
        before = frame;
        after = next;
    }

    /**
     * Puts down mean and differences.
     *
     * @param openings of the cell
     * @param ofBefore by what the earlier frame is multiplied; {@code ofAfter} the later one
     */
    void take(int cell, int openings, double ofBefore, double ofAfter) {
        early = ofBefore;
        late = ofAfter;
        int lower = 3 * cell + axis;
        int open = openings >> 2 * Openings.FACES * axis;
        double near = (open & 1) != 0 ? flow(lower) : 0;
        double nearOne = slope(near, open >> 1, lower, one);
        double nearOther = slope(near, open >> 3, lower, other);
        int upper = lower + step;
        open >>= Openings.FACES;
        double far = (open & 1) != 0 ? flow(upper) : 0;
        double farOne = slope(far, open >> 1, upper, one);
        double farOther = slope(far, open >> 3, upper, other);
        mean = (near + far) / 2;
        change = far - near;
        meanOfOne = (nearOne + farOne) / 2;
        changeOfOne = farOne - nearOne;
        meanOfOther = (nearOther + farOther) / 2;
        changeOfOther = farOther - nearOther;
    }

    /** How the flow through a face changes from face to face along a side, as far as those are open. */
    private double slope(double here, int open, int at, int side) {
        double ahead = (open & 1) != 0 ? flow(at + side) - here : 0;
        double behind = (open & 2) != 0 ? here - flow(at - side) : 0;
        return (ahead + behind) / 2;
    }

    private double flow(int at) {
        return early * before[at] + late * after[at];
    }

    /**
     * Velocity across the faces, at a place told from the middle of the cell.
     *
     * @param bulge what takes away the divergence that the slopes of the other two components leave
     */
    double velocity(double across, double alongOne, double alongOther, double bulge) {
        return mean + across * change + alongOne * (meanOfOne + across * changeOfOne)
                + alongOther * (meanOfOther + across * changeOfOther) - bulge * (across * across - 0.25);
    }
}
