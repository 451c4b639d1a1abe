package slackwater.detritus;

/**
 * Random numbers that depend on nothing but what they are for: the run's seed, the grain, and how often that grain has
 * drawn. So the order in which grains are moved, and on how many threads, does not matter. Mixing by the finaliser of
 * [Steele2014].
 */
record Dice(long seed) {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double TO_UNIT = 0x1.0p-53;
    private static final double ROOT_OF_12 = Math.sqrt(12);

    /** Evenly in 0..1, the 1 left out. */
    double uniform(int grain, long draw) {
        return (mix(mix(seed + GOLDEN * grain) + GOLDEN * draw) >>> 11) * TO_UNIT;
    }

    /** Evenly about 0 with variance 1: as good as normal for steps of a random walk, and never far out. */
    double kick(int grain, long draw) {
        return (uniform(grain, draw) - 0.5) * ROOT_OF_12;
    }

    /** Normal with variance 1, by [Box1958]. */
    double normal(int grain, long draw) {
        double radius = Math.sqrt(-2 * Math.log(1 - uniform(grain, draw)));
        return radius * Math.cos(2 * Math.PI * uniform(grain, draw + 1));
    }

    private static long mix(long value) {
        long z = value + GOLDEN;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }
}
