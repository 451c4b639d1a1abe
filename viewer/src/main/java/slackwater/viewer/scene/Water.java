package slackwater.viewer.scene;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import slackwater.field.FlowStatistics;

/**
 * What the water does.
 *
 * @param flow the averaged flow
 * @param stillProbability that each cell's water stands still, 0..1, one value a cell
 * @param deposits by the name of what was let go, where it came to lie: share of it a square metre, one value a cell
 * @param crumbs where single grains ended, of each kind that was let go in the tank
 * @param settled whether the numbers can be relied on yet
 */
public record Water(FlowStatistics flow, float[] stillProbability, Map<String, float[]> deposits,
                    List<Crumbs> crumbs, boolean settled) {
    private static final double[] TOPS_M_PER_S = {0.02, 0.05, 0.08, 0.10, 0.12, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50,
        0.60, 0.80, 1.0, 1.5, 2.0, 3.0};
    private static final double TOP_SHARE = 0.98;
    private static final int CLASSES = 4096;

    public Water {
        crumbs = List.copyOf(crumbs);
        if (stillProbability.length != flow.grid().cells()) {
            throw new IllegalArgumentException("every cell must have a chance of standing still");
        }
    }

    /** Water in which nothing was followed. */
    public Water(FlowStatistics flow, float[] stillProbability, boolean settled) {
        this(flow, stillProbability, Map.of(), List.of(), settled);
    }

    /** Water without single grains. */
    public Water(FlowStatistics flow, float[] stillProbability, Map<String, float[]> deposits, boolean settled) {
        this(flow, stillProbability, deposits, List.of(), settled);
    }

    /** Where all that was let go came to lie, the mean over its kinds: share of it a square metre, one value a cell. */
    public float[] meanDeposit() {
        float[] mean = new float[flow.grid().cells()];
        for (float[] one : deposits.values()) {
            for (int cell = 0; cell < mean.length; cell++) {
                mean[cell] += one[cell] / deposits.size();
            }
        }
        return mean;
    }

    /** The round speed, metres per second, that 98 % of the water keeps below: where colours end. */
    public double topMPerS() {
        double high = quantileMPerS(TOP_SHARE);
        return Arrays.stream(TOPS_M_PER_S).filter(round -> round >= high).findFirst()
                .orElse(TOPS_M_PER_S[TOPS_M_PER_S.length - 1]);
    }

    /**
     * The mean speed that a share of the water keeps below, metres per second; too high by a four thousandth of the
     * greatest speed at most. Counts instead of sorting, since a fine field has millions of cells.
     */
    public double quantileMPerS(double share) {
        float greatest = 0;
        long water = 0;
        for (int cell = 0; cell < flow.grid().cells(); cell++) {
            if (flow.fluid()[cell]) {
                greatest = Math.max(greatest, flow.meanSpeed()[cell]);
                water++;
            }
        }
        if (greatest == 0) {
            return 0;
        }
        long[] counts = new long[CLASSES + 1];
        for (int cell = 0; cell < flow.grid().cells(); cell++) {
            if (flow.fluid()[cell]) {
                counts[(int) (flow.meanSpeed()[cell] / greatest * CLASSES)]++;
            }
        }
        long below = 0;
        int reached = 0;
        while (reached < CLASSES && below + counts[reached] < share * water) {
            below += counts[reached++];
        }
        return greatest * Math.min(1.0, (reached + 1.0) / CLASSES);
    }

    /**
     * Memory of the fields, bytes: nine numbers a cell, its chance of standing still, what lies there of each kind,
     * and whether it is water.
     */
    public long bytes() {
        return flow.grid().cells() * ((10L + deposits.size()) * Float.BYTES + 1);
    }
}
