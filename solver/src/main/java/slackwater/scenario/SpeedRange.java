package slackwater.scenario;

/**
 * The mean speeds that a coral thrives in, metres per second.
 *
 * @param source where the range comes from, in words for the report
 */
public record SpeedRange(double lowMPerS, double highMPerS, String source) {
}
