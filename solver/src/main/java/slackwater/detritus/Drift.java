package slackwater.detritus;

import java.util.List;

/**
 * What became of grains.
 *
 * @param releases what was let go
 * @param census how many were where, and when
 * @param scenes where each was at the times asked for
 */
public record Drift(List<Release> releases, Census census, List<Scene> scenes) {
    /** No grains at all. */
    public static final Drift NONE = new Drift(List.of(), Census.empty(1, 1, 0), List.of(new Scene(0, new float[0],
            new float[0], new float[0], new byte[0], new short[0], new short[0])));
}
