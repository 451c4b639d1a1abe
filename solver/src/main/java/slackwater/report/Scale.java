package slackwater.report;

import java.util.Arrays;
import slackwater.field.FlowStatistics;

/** What all pictures of a report share, so that they can be compared: colour range and size. */
record Scale(double topMPerS, double unitsPerM) {
    private static final double[] TOPS_M_PER_S = {0.02, 0.05, 0.08, 0.10, 0.12, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50,
        0.60, 0.80, 1.0, 1.5, 2.0, 3.0};
    private static final double SHOWN_SHARE = 0.98;
    private static final double LONGEST_UNITS = 640;

    /** Colours end at a round speed that 98 % of the water keeps below. */
    static Scale of(FlowStatistics flow) {
        float[] speeds = new float[flow.grid().cells()];
        int water = 0;
        for (int cell = 0; cell < speeds.length; cell++) {
            if (flow.fluid()[cell]) {
                speeds[water++] = flow.meanSpeed()[cell];
            }
        }
        Arrays.sort(speeds, 0, water);
        double high = water == 0 ? 0 : speeds[(int) (SHOWN_SHARE * (water - 1))];
        double top = Arrays.stream(TOPS_M_PER_S).filter(round -> round >= high).findFirst().orElse(high);
        int longest = Math.max(flow.grid().nx(), Math.max(flow.grid().ny(), flow.grid().nz()));
        return new Scale(top, LONGEST_UNITS / (longest * flow.grid().cellSizeM()));
    }
}
