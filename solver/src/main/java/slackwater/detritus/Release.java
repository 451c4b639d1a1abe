package slackwater.detritus;

import slackwater.geometry.Vec3;

/**
 * Grains of one kind that are let go together.
 *
 * @param from where
 * @param count how many are tracked
 * @param hold multiple of the kind's thresholds, 1 for the kind as it is: to see how much depends on them
 */
public record Release(Grain grain, From from, int count, double hold) {
    /** Where grains come from. */
    public sealed interface From {
        /** Anywhere in the water. */
        record Everywhere() implements From {
        }

        /** All over the surface. */
        record Surface() implements From {
        }

        /** Within a small ball about a place, metres. */
        record Pinch(Vec3 atM, double radiusM) implements From {
        }

        /** Spread over a coral, by its number in the scenario, and lying on it. */
        record OnCoral(int coral) implements From {
        }
    }
}
