package slackwater.detritus;

/**
 * How many grains of each release were where, at regular times.
 *
 * @param everyS time between two counts; the first is at 0
 * @param counts by time, release and {@link Place#ordinal}
 * @param onOwnCoral by time and release: grains let go on a coral that are still on it or just above it
 */
public record Census(double everyS, int[][][] counts, int[][] onOwnCoral) {
    static Census empty(double everyS, int times, int releases) {
        return new Census(everyS, new int[times][releases][Place.values().length], new int[times][releases]);
    }

    public int times() {
        return counts.length;
    }

    public int count(int time, int release, Place place) {
        return counts[time][release][place.ordinal()];
    }

    /** All grains of a release at a time, wherever they are. */
    public int all(int time, int release) {
        int sum = 0;
        for (int count : counts[time][release]) {
            sum += count;
        }
        return sum;
    }

    /** Adds the counts of other grains of the same releases at the same times. */
    void add(Census other) {
        for (int time = 0; time < counts.length; time++) {
            for (int release = 0; release < counts[time].length; release++) {
                onOwnCoral[time][release] += other.onOwnCoral[time][release];
                for (int place = 0; place < counts[time][release].length; place++) {
                    counts[time][release][place] += other.counts[time][release][place];
                }
            }
        }
    }
}
