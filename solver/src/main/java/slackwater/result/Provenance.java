package slackwater.result;

import java.time.Instant;

/**
 * What it takes to repeat a run.
 *
 * @param version of this program
 * @param scenarioFile name of the scenario file
 * @param scenarioText the file's text
 * @param scenarioSha256 SHA-256 of the file's bytes, hexadecimal
 * @param cellSizeM edge of a cell, metres
 * @param seed of the pumps' turbulence
 * @param operator name of the collision operator
 * @param backend name of the back end
 * @param threads threads used; the result does not depend on them
 * @param javaVersion the Java that ran it
 * @param date when the run ended
 */
public record Provenance(String version, String scenarioFile, String scenarioText, String scenarioSha256,
                         double cellSizeM, long seed, String operator, String backend, int threads,
                         String javaVersion, Instant date) {
}
