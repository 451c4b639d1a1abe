package slackwater.backend.cpu;

import java.util.Arrays;

/** What moving walls add to the populations that they turn round, block by block of the sweep. */
final class MovingWalls {
    /** First gain of each block. */
    private final int[] first;
    private int[] evenTarget = new int[16];
    private int[] oddTarget = new int[16];
    private float[] gain = new float[16];
    private int count;

    /** @param blocks how many blocks there are, from 0 on */
    MovingWalls(int blocks) {
        first = new int[blocks + 1];
    }

    /**
     * Adds a gain for a cell of a block, none of an earlier block than the last one added.
     *
     * @param even where it is due in the array before an even step, and odd before an odd one
     */
    void add(int block, int even, int odd, double value) {
        if (count == gain.length) {
            evenTarget = Arrays.copyOf(evenTarget, 2 * count);
            oddTarget = Arrays.copyOf(oddTarget, 2 * count);
            gain = Arrays.copyOf(gain, 2 * count);
        }
        evenTarget[count] = even;
        oddTarget[count] = odd;
        gain[count++] = (float) value;
        first[block + 1] = count;
    }

    /** Ends the adding, before the first step. */
    void pack() {
        for (int block = 1; block < first.length; block++) {
            first[block] = Math.max(first[block], first[block - 1]);
        }
    }

    /** Adds the gains of a block, after its copies. */
    void apply(float[] f, int parity, int block) {
        int[] target = parity == 0 ? evenTarget : oddTarget;
        for (int n = first[block]; n < first[block + 1]; n++) {
            f[target[n]] += gain[n];
        }
    }
}
