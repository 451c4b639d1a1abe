package slackwater.detritus;

/**
 * Where every grain was at one moment.
 *
 * @param timeS since the grains were let go, seconds
 * @param xM metres (yM, zM likewise), one value a grain
 * @param place ordinal of the {@link Place}
 * @param at number of the coral or pump that it was at, -1 for none
 * @param group number of its release
 */
public record Scene(double timeS, float[] xM, float[] yM, float[] zM, byte[] place, short[] at, short[] group) {
    /** Room for the grains of a cloud. */
    static Scene of(double timeS, Cloud cloud) {
        int size = cloud.size();
        return new Scene(timeS, new float[size], new float[size], new float[size], new byte[size], new short[size],
                cloud.group);
    }

    public int grains() {
        return xM.length;
    }

    public Place place(int grain) {
        return Place.values()[place[grain]];
    }
}
