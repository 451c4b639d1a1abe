package slackwater.field;

/**
 * The flow averaged over the window, one value a cell in the order of the grid, metres per second.
 * Cells of glass, rock and sand hold 0 and are false in {@code fluid}.
 *
 * @param grid the cells
 * @param fluid true where there is water
 * @param meanU mean velocity along x (meanV along y, meanW along z)
 * @param meanSpeed mean of |u|: what a coral feels, about 1.4 times the speed of the mean velocity
 * @param rmsSpeed root of the mean of |u|^2
 * @param standardErrorSpeed standard error of meanSpeed, from batch means
 */
public record FlowStatistics(Grid grid, boolean[] fluid, float[] meanU, float[] meanV, float[] meanW,
                             float[] meanSpeed, float[] rmsSpeed, float[] standardErrorSpeed) {
    public FlowStatistics {
        int cells = grid.cells();
        if (fluid.length != cells || meanU.length != cells || meanV.length != cells || meanW.length != cells
                || meanSpeed.length != cells || rmsSpeed.length != cells || standardErrorSpeed.length != cells) {
            throw new IllegalArgumentException("every array must hold one value for each of the " + cells + " cells");
        }
    }
}
