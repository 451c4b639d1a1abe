package slackwater.analysis;

import slackwater.scenario.Pump;
import slackwater.scenario.Return;
import slackwater.scenario.Scenario;

/**
 * Rated flow over the water's volume, an hour.
 *
 * @param pumpsPerHour all circulation pumps at their set output
 * @param returnPerHour the return from the sump; 0 without one
 */
public record Turnover(double pumpsPerHour, double returnPerHour) {
    /** What to make of it. */
    public static final String NOTE = "Turnover predicts little: the speed that a jet makes goes with the square root"
            + " of its thrust, not with the flow on the box, and rock and aim decide where it arrives.";
    private static final double SECONDS_PER_HOUR = 3600;

    public static Turnover of(Scenario scenario, double waterVolumeM3) {
        double pumps = scenario.pumps().stream().mapToDouble(Turnover::flow).sum();
        double fromSump = scenario.returnLine().map(Return::flowM3PerS).orElse(0.0);
        return new Turnover(pumps * SECONDS_PER_HOUR / waterVolumeM3, fromSump * SECONDS_PER_HOUR / waterVolumeM3);
    }

    private static double flow(Pump pump) {
        return pump.flowM3PerS() * pump.outputFraction();
    }
}
