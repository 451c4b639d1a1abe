package slackwater.scenario;

/** Corals by the water they need. */
public enum CoralGroup { SOFT, LARGE_POLYP, SMALL_POLYP, PLATING }
