package slackwater.analysis;

import java.util.List;

/**
 * Water that hardly moves: mean speed below 2 cm/s and gusts below 5 cm/s.
 * How far it reaches is never known sharply, so the volume comes with what is surely and what is possibly still.
 *
 * @param regions connected regions of at least 0.1 litre and 8 cells, the largest first
 * @param scatteredM3 volume of the smaller pockets together
 * @param pockets number of the smaller pockets
 * @param volumeM3 all still water
 * @param shareFraction share of the whole water, 0..1
 * @param surelyM3 still even with two standard errors added to the speed
 * @param possiblyM3 still with two standard errors taken off the speed
 */
public record StillWater(List<StillRegion> regions, double scatteredM3, int pockets, double volumeM3,
                         double shareFraction, double surelyM3, double possiblyM3) {
    /** Mean speed and gusts (the speed passed 5 % of the time) below which water counts as still, metres per second. */
    public static final double MEAN_LIMIT_M_PER_S = 0.02;
    public static final double GUST_LIMIT_M_PER_S = 0.05;
    /** Where the limits come from, for the report. */
    public static final String SOURCE = "A working definition: water below about 6 cm/s at 1 cm above a smooth surface"
            + " stays under the 0.018 Pa that lifts fresh fish waste (Cromey and others 2002, Estuaries 25:916).";
}
