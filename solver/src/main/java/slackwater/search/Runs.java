package slackwater.search;

/**
 * The ways in which a search computes its trials, from quick to careful.
 *
 * @param screen on large cells, short: every candidate
 * @param sift on smaller cells, short: the best of them
 * @param confirm on fine cells until the readings have settled: the best few of those
 * @param hold on the cells of the sift, short, for what changes when something is off
 */
public record Runs(Trials screen, Trials sift, Trials confirm, Trials hold) {
}
