package slackwater.viewer.session;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slackwater.viewer.scene.Water;

/** Where the colours of speeds end: the same for all tanks, and not jumping about while the water develops. */
public final class Tops {
    private static final double AT_FIRST_M_PER_S = 0.3;
    /** Colours end lower only where that makes a clear difference. */
    private static final double LOWER_FRACTION = 0.45;

    private double topMPerS = AT_FIRST_M_PER_S;
    private List<Water> seen = List.of();

    /** The end of the colours for the tanks as they are now, metres per second. */
    public double of(List<Side> sides) {
        List<Water> waters = sides.stream().map(Side::water).flatMap(Optional::stream).toList();
        if (!same(waters, seen) && !waters.isEmpty()) {
            seen = waters;
            double now = waters.stream().mapToDouble(Water::topMPerS).max().orElse(topMPerS);
            topMPerS = now > topMPerS || now < LOWER_FRACTION * topMPerS ? now : topMPerS;
        }
        return topMPerS;
    }

    private static boolean same(List<Water> some, List<Water> others) {
        return some.size() == others.size()
                && Stream.iterate(0, n -> n < some.size(), n -> n + 1).allMatch(n -> some.get(n) == others.get(n));
    }
}
