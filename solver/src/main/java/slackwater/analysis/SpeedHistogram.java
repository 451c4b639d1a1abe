package slackwater.analysis;

import java.util.ArrayList;
import java.util.List;
import slackwater.field.FlowStatistics;

/** How much of the water moves how fast: mean speed in fixed classes; the shares add up to 1. */
public record SpeedHistogram(List<Bin> bins) {
    private static final double[] EDGES_M_PER_S = {0, 0.01, 0.02, 0.03, 0.05, 0.08, 0.12, 0.20, 0.30, 0.50,
        Double.POSITIVE_INFINITY};

    /**
     * One class of speed.
     *
     * @param fromMPerS its lower edge, which belongs to it
     * @param toMPerS its upper edge, which does not; infinite for the last
     * @param shareFraction share of the water's volume, 0..1
     */
    public record Bin(double fromMPerS, double toMPerS, double shareFraction) {
    }

    static SpeedHistogram of(FlowStatistics flow) {
        int[] counts = new int[EDGES_M_PER_S.length - 1];
        int water = 0;
        for (int cell = 0; cell < flow.grid().cells(); cell++) {
            if (flow.fluid()[cell]) {
                water++;
                int bin = 0;
                while (flow.meanSpeed()[cell] >= EDGES_M_PER_S[bin + 1]) {
                    bin++;
                }
                counts[bin]++;
            }
        }
        List<Bin> bins = new ArrayList<>();
        for (int bin = 0; bin < counts.length; bin++) {
            double share = water == 0 ? 0 : (double) counts[bin] / water;
            bins.add(new Bin(EDGES_M_PER_S[bin], EDGES_M_PER_S[bin + 1], share));
        }
        return new SpeedHistogram(List.copyOf(bins));
    }
}
