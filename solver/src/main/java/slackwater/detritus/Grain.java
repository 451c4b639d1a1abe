package slackwater.detritus;

/**
 * What a grain of one kind is like. Real grains differ: each tracked one has its own settling speed and thresholds,
 * log-normal with these as their medians.
 *
 * @param name as the user calls it
 * @param sizeM middling diameter, metres
 * @param densityKgPerM3 kilograms per cubic metre
 * @param settlingMPerS speed at which it sinks in still water
 * @param spreadFraction how much that differs from grain to grain, one standard deviation as a share
 * @param smoothPa shear stress of the water that lifts it from something smooth, pascals
 * @param sandPa the same from sand
 * @param rockPa the same from broken rock, in whose hollows it hides
 * @param caughtFraction share that stays in a circulation pump that draws it in, 0..1
 * @param basis where the numbers come from, and which of them are assumed
 */
public record Grain(String name, double sizeM, double densityKgPerM3, double settlingMPerS, double spreadFraction,
                    double smoothPa, double sandPa, double rockPa, double caughtFraction, String basis) {
    /** How much the threshold differs from grain to grain: the scatter of the data, [Soulsby1997]. */
    static final double THRESHOLD_SPREAD = 0.25;

    /** The shear stress that lifts it from a surface, pascals. */
    double liftPa(Footing footing) {
        return switch (footing) {
            case SMOOTH -> smoothPa;
            case SAND -> sandPa;
            case BROKEN -> rockPa;
        };
    }
}
