package slackwater.analysis;

import java.util.List;

/**
 * Water that hardly moves: mean speed below 2 cm/s and gusts below 5 cm/s. How far it reaches is never known sharply,
 * so each cell has a probability; in words: surely still from {@value #SURELY}, likely from {@value #LIKELY}, possibly
 * from {@value #POSSIBLY} on.
 *
 * @param regions connected regions of likely still water of at least 0.1 litre and 8 cells, the largest first
 * @param scatteredM3 volume of the smaller pockets together
 * @param pockets number of the smaller pockets
 * @param volumeM3 all likely still water
 * @param shareFraction its share of the whole water, 0..1
 * @param surelyM3 surely still water
 * @param possiblyM3 possibly still water, the likely and the sure included
 * @param expectedM3 the sum over the cells of probability times volume
 * @param probability of each cell in the order of the grid, 0..1; 0 outside the water
 */
public record StillWater(List<StillRegion> regions, double scatteredM3, int pockets, double volumeM3,
                         double shareFraction, double surelyM3, double possiblyM3, double expectedM3,
                         float[] probability) {
    /** Mean speed and gusts (the speed passed 5 % of the time) below which water counts as still, metres per second. */
    public static final double MEAN_LIMIT_M_PER_S = 0.02;
    public static final double GUST_LIMIT_M_PER_S = 0.05;
    public static final double SURELY = 0.95;
    public static final double LIKELY = 0.5;
    public static final double POSSIBLY = 0.05;
    /** Where the limits come from, for the report. */
    public static final String SOURCE = "A working definition: water below about 6 cm/s at 1 cm above a smooth surface"
            + " stays under the 0.018 Pa that lifts fresh fish waste (Cromey and others 2002, Estuaries 25:916).";
}
