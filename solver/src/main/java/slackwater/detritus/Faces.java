package slackwater.detritus;

import slackwater.field.Grid;

/**
 * The two faces of a cell across one axis: mean and difference of the flow through them, and of the slopes of that flow
 * along the other two axes, which are called one and other. One for each thread and axis.
 */
final class Faces {
    /** Where the values of a frame are: means and differences of the flow, of its slope along one, along the other. */
    private static final int MEAN = 0;
    private static final int CHANGE = 1;
    private static final int MEAN_OF_ONE = 2;
    private static final int CHANGE_OF_ONE = 3;
    private static final int MEAN_OF_OTHER = 4;
    private static final int CHANGE_OF_OTHER = 5;
    private static final int VALUES = 6;

    private final int axis;
    private final int step;
    private final int one;
    private final int other;
    private short[] before = new short[0];
    private short[] after = new short[0];
    private final double[] ofBefore = new double[VALUES];
    private final double[] ofAfter = new double[VALUES];
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
     * Puts down what both frames have at a cell.
     *
     * @param openings of the cell
     */
    void look(int cell, int openings) {
        int open = openings >> 2 * Openings.FACES * axis;
        look(before, 3 * cell + axis, open, ofBefore);
        look(after, 3 * cell + axis, open, ofAfter);
    }

    private void look(short[] flow, int lower, int open, double[] values) {
        double near = (open & 1) != 0 ? flow[lower] : 0;
        double nearOne = slope(flow, near, open >> 1, lower, one);
        double nearOther = slope(flow, near, open >> 3, lower, other);
        int upper = lower + step;
        int ahead = open >> Openings.FACES;
        double far = (ahead & 1) != 0 ? flow[upper] : 0;
        double farOne = slope(flow, far, ahead >> 1, upper, one);
        double farOther = slope(flow, far, ahead >> 3, upper, other);
        values[MEAN] = (near + far) / 2;
        values[CHANGE] = far - near;
        values[MEAN_OF_ONE] = (nearOne + farOne) / 2;
        values[CHANGE_OF_ONE] = farOne - nearOne;
        values[MEAN_OF_OTHER] = (nearOther + farOther) / 2;
        values[CHANGE_OF_OTHER] = farOther - nearOther;
    }

    /** How the flow through a face changes from face to face along a side, as far as those are open. */
    private static double slope(short[] flow, double here, int open, int at, int side) {
        double ahead = (open & 1) != 0 ? flow[at + side] - here : 0;
        double behind = (open & 2) != 0 ? here - flow[at - side] : 0;
        return (ahead + behind) / 2;
    }

    /** Takes the earlier frame times a number and the later one times another. */
    void take(double early, double late) {
        mean = early * ofBefore[MEAN] + late * ofAfter[MEAN];
        change = early * ofBefore[CHANGE] + late * ofAfter[CHANGE];
        meanOfOne = early * ofBefore[MEAN_OF_ONE] + late * ofAfter[MEAN_OF_ONE];
        changeOfOne = early * ofBefore[CHANGE_OF_ONE] + late * ofAfter[CHANGE_OF_ONE];
        meanOfOther = early * ofBefore[MEAN_OF_OTHER] + late * ofAfter[MEAN_OF_OTHER];
        changeOfOther = early * ofBefore[CHANGE_OF_OTHER] + late * ofAfter[CHANGE_OF_OTHER];
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
