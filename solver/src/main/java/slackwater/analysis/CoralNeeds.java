package slackwater.analysis;

import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.SpeedRange;

/**
 * The mean speeds that each group of corals is kept in. Only the lower limits of the stony groups rest on experiments;
 * the rest is the keepers' common practice, and each source text says which.
 */
public final class CoralNeeds {
    private static final SpeedRange SOFT = new SpeedRange(0.02, 0.20, "common practice, no source");
    private static final SpeedRange LARGE_POLYP = new SpeedRange(0.02, 0.18,
            "common practice, no source; above it the polyps draw in");
    private static final SpeedRange SMALL_POLYP = new SpeedRange(0.05, 0.50,
            "lower limit: above the 3 cm/s below which growth and survival suffered in 20 months of flumes"
            + " (Nakamura & Yamasaki 2005, Mar. Pollut. Bull. 50); upper limit: common practice, no source");
    private static final SpeedRange PLATING = new SpeedRange(0.04, 0.35,
            "lower limit: 4 taken out of 3 to 5 cm/s, still water below 3 cm/s (Nakamura & Yamasaki 2005,"
            + " Mar. Pollut. Bull. 50), and a plate needs flow to shed sediment (Duckworth, Giofre & Jones 2017,"
            + " Mar. Pollut. Bull. 125:456, tested 0 to 17 cm/s); upper limit: common practice, no source");

    private CoralNeeds() {
    }

    /** The coral's own range where the user gave one, else that of its group. */
    public static SpeedRange rangeFor(Coral coral) {
        return coral.range().orElseGet(() -> of(coral.group()));
    }

    /** The range of mean speed, metres per second, with where it comes from. */
    public static SpeedRange of(CoralGroup group) {
        return switch (group) {
            case SOFT -> SOFT;
            case LARGE_POLYP -> LARGE_POLYP;
            case SMALL_POLYP -> SMALL_POLYP;
            case PLATING -> PLATING;
        };
    }

    /** The group in the words of the scenario file. */
    public static String nameOf(CoralGroup group) {
        return switch (group) {
            case SOFT -> "soft";
            case LARGE_POLYP -> "large-polyp";
            case SMALL_POLYP -> "small-polyp";
            case PLATING -> "plating";
        };
    }
}
