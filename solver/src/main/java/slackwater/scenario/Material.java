package slackwater.scenario;

import java.util.OptionalDouble;

/**
 * Something that sinks, as the user describes it. What is left out follows from size and density.
 *
 * @param sizeM its middling diameter, metres
 * @param densityKgPerM3 of a grain, kilograms per cubic metre; above that of the water
 * @param settlingMPerS the speed at which it sinks in still water, metres per second
 * @param smoothPa the water's shear stress that lifts it from something smooth, pascals
 * @param sandPa the same from sand
 * @param rockPa the same from broken rock
 * @param caughtFraction share that stays in a circulation pump that draws it in, 0..1
 */
public record Material(String name, double sizeM, double densityKgPerM3, OptionalDouble settlingMPerS,
                       OptionalDouble smoothPa, OptionalDouble sandPa, OptionalDouble rockPa,
                       double caughtFraction) {
}
