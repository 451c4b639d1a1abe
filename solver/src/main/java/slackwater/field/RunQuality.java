package slackwater.field;

/**
 * How the run went: enough to judge whether its numbers can be trusted.
 *
 * @param settled whether the readings stopped changing within the limit
 * @param remark one plain sentence on why it stopped
 * @param spinUpS water time left out before averaging
 * @param averagedS water time averaged
 * @param timeStepS length of a step
 * @param steps steps taken
 * @param greatestMach greatest speed met, as a fraction of the lattice's speed of sound
 * @param massDriftPerMinute change of the water's mass per minute, as a fraction of the whole
 * @param cellUpdatesPerS cell updates per second of wall time
 * @param wallTimeS wall time of the simulation
 */
public record RunQuality(boolean settled, String remark, double spinUpS, double averagedS, double timeStepS,
                         long steps, double greatestMach, double massDriftPerMinute, double cellUpdatesPerS,
                         double wallTimeS) {
}
