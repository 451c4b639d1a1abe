package slackwater.viewer.session;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slackwater.geometry.Vec3;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Units;
import slackwater.viewer.shape.Axis;
import slackwater.viewer.shape.SliceSheet.Cut;

/** What is shown of all tanks alike, and in which units. */
public final class Showing {
    private static final double SLIDE_FRACTION = 0.025;

    private final EnumSet<Layer> layers = EnumSet.of(Layer.TRACERS, Layer.JETS, Layer.NAMES, Layer.STILL_WATER);
    private final EnumMap<Axis, Double> cuts = new EnumMap<>(Axis.class);
    private Optional<Axis> sliding = Optional.empty();
    private Units units = Units.METRIC;
    private boolean difference;

    public Set<Layer> layers() {
        EnumSet<Layer> shown = EnumSet.copyOf(layers);
        if (!cuts.isEmpty()) {
            shown.add(Layer.SPEED);
        }
        return shown;
    }

    public boolean shows(Layer layer) {
        return layers().contains(layer);
    }

    void toggle(Layer layer) {
        if (!layers.remove(layer)) {
            layers.add(layer);
        }
    }

    /** Slices through the water, at most one square to each axis. */
    public List<Cut> cuts() {
        return cuts.entrySet().stream().map(cut -> new Cut(cut.getKey(), cut.getValue())).toList();
    }

    /** Where a slice stands, metres along its axis; empty where there is none. */
    public Optional<Double> cut(Axis axis) {
        return Optional.ofNullable(cuts.get(axis));
    }

    /** Puts a slice into the middle, or takes it away. */
    void toggle(Axis axis, Vec3 insideM) {
        if (cuts.remove(axis) == null) {
            cuts.put(axis, axis.of(insideM) / 2);
            sliding = Optional.of(axis);
        } else {
            sliding = cuts.keySet().stream().findFirst();
        }
    }

    /** Slides the slice that came last, one step back (-1) or forth (1). */
    void slide(int way, Vec3 insideM) {
        sliding.ifPresent(axis -> slideTo(axis, cuts.get(axis) + way * SLIDE_FRACTION * axis.of(insideM), insideM));
    }

    /** Slides a slice to a place, metres, within the tank. */
    public void slideTo(Axis axis, double placeM, Vec3 insideM) {
        cuts.put(axis, Math.max(0, Math.min(axis.of(insideM), placeM)));
        sliding = Optional.of(axis);
    }

    public Units units() {
        return units;
    }

    void use(Units other) {
        units = other;
    }

    public boolean difference() {
        return difference;
    }

    void toggleDifference() {
        difference = !difference;
    }
}
