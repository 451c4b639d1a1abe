package slackwater.pump.catalogue;

import java.util.OptionalDouble;
import slackwater.geometry.Vec3;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pump;

/**
 * A pump as its data sheet has it, and how far to believe that.
 *
 * @param name what to call it
 * @param origin where the figures come from, in words
 * @param makersFlowM3PerS the maker's figure at full output
 * @param deliveredFraction share of that figure to count on, above 0 and at most 1.1
 * @param doubtFraction how far the flow counted on may still be off, as a share, 95 %; 0..0.6
 * @param outlet its opening
 * @param thrustFactor jet momentum over rho Q^2/A, 1..2
 * @param powerW electric power at full output, watts; empty where it is not known
 * @param price in the keeper's own money; empty where it is not known
 * @param leastOutputFraction lowest output that can be set, 0..1; 1 for a pump that cannot be turned down
 * @param quietOutputFraction output up to which it is not heard beside the tank, 0..1
 * @param leastDepthM water that the middle of the outlet needs above it, metres
 * @param greatestDepthM how deep the middle of the outlet may hang, metres
 * @param bodyM length along the jet, width and height of the body, metres
 */
public record PumpModel(String name, String origin, double makersFlowM3PerS, double deliveredFraction,
                        double doubtFraction, Outlet outlet, double thrustFactor, OptionalDouble powerW,
                        OptionalDouble price, double leastOutputFraction, double quietOutputFraction,
                        double leastDepthM, double greatestDepthM, Vec3 bodyM) {
    private static final double USUAL_STAND_OFF_M = 0.04;
    private static final double BODY_PER_OUTLET = 1.3;

    /** The pump of a scenario as a model of which only flow and outlet are known: power and price are not. */
    public static PumpModel of(Pump pump) {
        double acrossM = pump.outlet() instanceof Outlet.Slot slot ? Math.max(slot.widthM(), slot.heightM())
                : ((Outlet.Round) pump.outlet()).diameterM();
        return new PumpModel(pump.name(), "the scenario", pump.flowM3PerS(), 1, 0, pump.outlet(),
                pump.thrustFactor(), OptionalDouble.empty(), OptionalDouble.empty(), 0.3, 1, 0.05, 2,
                new Vec3(USUAL_STAND_OFF_M, BODY_PER_OUTLET * acrossM, BODY_PER_OUTLET * acrossM));
    }

    /** The flow to count on at full output, cubic metres per second. */
    public double flowM3PerS() {
        return makersFlowM3PerS * deliveredFraction;
    }

    /**
     * Electric power at an output, watts: with the cube of the output, as the affinity laws have it (Q goes with n, P
     * with n cubed; common knowledge of the field, from memory). Electronics that draw power at rest are not in it.
     */
    public OptionalDouble powerW(double outputFraction) {
        return powerW.isEmpty() ? powerW
                : OptionalDouble.of(powerW.getAsDouble() * outputFraction * outputFraction * outputFraction);
    }
}
