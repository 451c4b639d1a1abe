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
}
