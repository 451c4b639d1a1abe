package slackwater.lattice;

/**
 * The D3Q27 velocity set: rest, the 6 neighbours across a face, the 12 across an edge and the 8 across a corner.
 * Opposite directions stand side by side: 1 and 2, 3 and 4, and so on. The speed of sound squared is 1/3. Source:
 * [Qian1992].
 */
public final class VelocitySet {
    public static final int Q = 27;
    public static final double SOUND_SPEED_SQUARED = 1.0 / 3;

    private static final int[] CX = {0, 1, -1, 0, 0, 0, 0, 1, -1, 1, -1, 0, 0, 1, -1, 1, -1, 0, 0,
        1, -1, 1, -1, 1, -1, -1, 1};
    private static final int[] CY = {0, 0, 0, 1, -1, 0, 0, 1, -1, 0, 0, 1, -1, -1, 1, 0, 0, 1, -1,
        1, -1, 1, -1, -1, 1, 1, -1};
    private static final int[] CZ = {0, 0, 0, 0, 0, 1, -1, 0, 0, 1, -1, 1, -1, 0, 0, -1, 1, -1, 1,
        1, -1, -1, 1, 1, -1, 1, -1};

    private VelocitySet() {
    }

    public static int cx(int direction) {
        return CX[direction];
    }

    public static int cy(int direction) {
        return CY[direction];
    }

    public static int cz(int direction) {
        return CZ[direction];
    }

    /** Weight of a direction: 8/27 at rest, 2/27 across a face, 1/54 across an edge, 1/216 across a corner. */
    public static double weight(int direction) {
        return direction == 0 ? 8.0 / 27 : direction <= 6 ? 2.0 / 27 : direction <= 18 ? 1.0 / 54 : 1.0 / 216;
    }

    /** The direction that points the other way. */
    public static int opposite(int direction) {
        return direction == 0 ? 0 : direction % 2 == 1 ? direction + 1 : direction - 1;
    }

    /** The direction with these components, each -1, 0 or 1. */
    public static int direction(int cx, int cy, int cz) {
        for (int i = 0; i < Q; i++) {
            if (CX[i] == cx && CY[i] == cy && CZ[i] == cz) {
                return i;
            }
        }
        throw new IllegalArgumentException("no direction (" + cx + ", " + cy + ", " + cz + ") in D3Q27");
    }
}
