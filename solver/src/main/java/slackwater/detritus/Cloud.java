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

    /** The same grains and more of them, which are still to be put somewhere. */
    Cloud enlarged(int more) {
        Cloud larger = new Cloud(size() + more);
        System.arraycopy(x, 0, larger.x, 0, size());
        System.arraycopy(y, 0, larger.y, 0, size());
        System.arraycopy(z, 0, larger.z, 0, size());
        System.arraycopy(place, 0, larger.place, 0, size());
        System.arraycopy(at, 0, larger.at, 0, size());
        System.arraycopy(group, 0, larger.group, 0, size());
        System.arraycopy(settlingMPerS, 0, larger.settlingMPerS, 0, size());
        System.arraycopy(hold, 0, larger.hold, 0, size());
        return larger;
    }

    /** Puts the places of some grains into a scene, metres. */
    void show(int from, int to, double cellSizeM, Scene scene) {
        float h = (float) cellSizeM;
        for (int n = from; n < to; n++) {
            scene.xM()[n] = x[n] * h;
            scene.yM()[n] = y[n] * h;
            scene.zM()[n] = z[n] * h;
        }
        System.arraycopy(place, from, scene.place(), from, to - from);
        System.arraycopy(at, from, scene.at(), from, to - from);
    }
}
