package slackwater.analysis;

import slackwater.field.FlowStatistics;
import slackwater.field.Grid;

/**
 * Movement of the topmost layer of water.
 *
 * @param meanMPerS mean speed over the surface
 * @param stillShareFraction share of the surface slower than 2 cm/s (common practice, no source), 0..1
 */
public record SurfaceMovement(double meanMPerS, double stillShareFraction) {
    private static final double STILL_M_PER_S = 0.02;

    static SurfaceMovement of(FlowStatistics flow) {
        Grid grid = flow.grid();
        int layerCells = grid.nx() * grid.ny();
        for (int k = grid.nz() - 1; k >= 0; k--) {
            int water = 0;
            int still = 0;
            double sum = 0;
            for (int cell = k * layerCells; cell < (k + 1) * layerCells; cell++) {
                if (flow.fluid()[cell]) {
                    water++;
                    still += flow.meanSpeed()[cell] < STILL_M_PER_S ? 1 : 0;
                    sum += flow.meanSpeed()[cell];
                }
            }
            if (water > 0) {
                return new SurfaceMovement(sum / water, (double) still / water);
            }
        }
        return new SurfaceMovement(0, 1);
    }
}
