package slackwater.detritus;

/** Grains, one entry each in every array; places are in cells from the tank's lower front left corner. */
final class Cloud {
    /** A little less than half a cell: a grain never stands on the border of two cells. */
    static final double EDGE = 2e-4;

    final float[] x;
    final float[] y;
    final float[] z;
    /** Ordinal of the {@link Place}. */
    final byte[] place;
    /** The coral or pump that it is at, -1 for none. */
    final short[] at;
    final short[] group;
    final float[] settlingMPerS;
    /** Multiple of its kind's thresholds at which this one lifts. */
    final float[] hold;

    Cloud(int size) {
        x = new float[size];
        y = new float[size];
        z = new float[size];
        place = new byte[size];
        at = new short[size];
        group = new short[size];
        settlingMPerS = new float[size];
        hold = new float[size];
    }

    int size() {
        return x.length;
    }
}
