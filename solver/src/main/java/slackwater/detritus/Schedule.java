package slackwater.detritus;

import java.util.List;

/**
 * How long to follow grains and when to look.
 *
 * @param lengthS seconds of water
 * @param countEveryS time between two counts
 * @param scenesS times at which the place of every grain is kept, in order; at most the length
 */
public record Schedule(double lengthS, double countEveryS, List<Double> scenesS) {
}
