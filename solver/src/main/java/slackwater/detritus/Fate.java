package slackwater.detritus;

import java.util.List;

/**
 * What became of something that was let go in the tank.
 *
 * @param grain what it was
 * @param from from where, in words
 * @param grains how many grains were followed: a share is known to about 1/sqrt of it
 * @param moments the shares at some times, in order
 * @param depositPerM2 where it lay at the last of them: share of the whole a square metre of ground, one value a cell,
 *     at the cells of water that lie on something
 */
public record Fate(Grain grain, String from, int grains, List<Moment> moments, float[] depositPerM2) {
    /**
     * Shares at one time, each 0..1, together 1.
     *
     * @param timeS since it was let go, seconds
     * @param share by {@link Place#ordinal}
     * @param onCoral by the corals' numbers
     */
    public record Moment(double timeS, double[] share, double[] onCoral) {
        public double at(Place place) {
            return share[place.ordinal()];
        }
    }

    public Moment last() {
        return moments.get(moments.size() - 1);
    }
}
