package slackwater.viewer.scene;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slackwater.viewer.shape.SliceSheet.Cut;

/**
 * What of a scene is shown, and how.
 *
 * @param layers beside the tank itself
 * @param cuts where the speed is shown on slices
 * @param topMPerS the speed where colours end
 * @param fastMPerS the speed from which water counts as fast
 * @param units what speeds are read in
 */
public record Look(Set<Layer> layers, List<Cut> cuts, double topMPerS, double fastMPerS, Units units) {
    private static final double FAST_SHARE = 0.9;
    private static final double TOP_WITHOUT_WATER_M_PER_S = 0.5;

    public Look {
        EnumSet<Layer> copy = EnumSet.noneOf(Layer.class);
        copy.addAll(layers);
        layers = Set.copyOf(copy);
        cuts = List.copyOf(cuts);
    }

    /** The usual look: colours end where 98 % of the water is slower, fast is what 90 % of it is slower than. */
    public static Look of(Scene scene, Set<Layer> layers, List<Cut> cuts) {
        double top = scene.water().map(Water::topMPerS).orElse(TOP_WITHOUT_WATER_M_PER_S);
        double fast = scene.water().map(water -> water.quantileMPerS(FAST_SHARE)).orElse(top);
        return new Look(layers, cuts, top, Math.max(fast, 1e-3), Units.METRIC);
    }

    public boolean shows(Layer layer) {
        return layers.contains(layer);
    }
}
