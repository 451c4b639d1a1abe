package slackwater.simulation;

import java.util.Arrays;

/**
 * How often the walls' stress was how strong, cell by cell: counts in bins of a quarter octave, cut by the first two
 * bits of a float's fraction, so that a sample costs no more than a shift. A percentile read from them is right to
 * about 3 %.
 */
final class Gusts {
    private static final int SHIFT = 21;
    private static final int PER_OCTAVE = 4;
    private static final int LOWEST_OCTAVE = -36;
    private static final int OCTAVES = 28;
    private static final int FIRST = (127 + LOWEST_OCTAVE) * PER_OCTAVE;
    private static final int BINS = OCTAVES * PER_OCTAVE;

    private static final short[] NONE = new short[0];

    private final short[][] counts;

    Gusts(int cells) {
        counts = new short[cells][];
        Arrays.fill(counts, NONE);
    }

    /** Bytes for a tank of this many cells, of which every eighth at most touches a wall. */
    static long bytes(long cells) {
        return cells * (Integer.BYTES + (BINS * Short.BYTES + 16) / 8);
    }

    /** Counts one sample of the cells [from, to). */
    void add(float[] stress, int from, int to) {
        for (int cell = from; cell < to; cell++) {
            if (stress[cell] > 0) {
                if (counts[cell] == NONE) {
                    counts[cell] = new short[BINS];
                }
                int bin = (Float.floatToRawIntBits(stress[cell]) >>> SHIFT) - FIRST;
                counts[cell][Math.max(0, Math.min(BINS - 1, bin))]++;
            }
        }
    }

    /** The stress that is passed in so many samples, one value a cell; 0 where there is no wall. */
    float[] passed(double samples) {
        float[] stress = new float[counts.length];
        for (int cell = 0; cell < stress.length; cell++) {
            stress[cell] = counts[cell] == NONE ? 0 : passed(counts[cell], samples);
        }
        return stress;
    }

    private static float passed(short[] bins, double above) {
        double sum = 0;
        for (int bin = BINS - 1; bin >= 0; bin--) {
            int count = bins[bin] & 0xffff;
            if (sum + count >= above && count > 0) {
                float low = Float.intBitsToFloat(bin + FIRST << SHIFT);
                float high = Float.intBitsToFloat(bin + 1 + FIRST << SHIFT);
                return (float) (high - (high - low) * (above - sum) / count);
            }
            sum += count;
        }
        return 0;
    }
}
