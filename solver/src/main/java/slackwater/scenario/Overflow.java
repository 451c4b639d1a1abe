package slackwater.scenario;

/** The weir at the water line through which the same water leaves: a stretch of one wall, metres along that wall. */
public record Overflow(Wall wall, double fromM, double toM) {
}
