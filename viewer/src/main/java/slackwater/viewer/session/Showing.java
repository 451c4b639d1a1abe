package slackwater.viewer.session;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slackwater.detritus.Grains;
import slackwater.geometry.Vec3;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Units;
import slackwater.viewer.scene.Water;
import slackwater.viewer.shape.Axis;
import slackwater.viewer.shape.SliceSheet.Cut;

/** What is shown of all tanks alike, and in which units. */
public final class Showing {
    private static final double SLIDE_FRACTION = 0.025;
    private static final double FAST_SHARE = 0.9;
    private static final double FAST_AT_FIRST_M_PER_S = 0.1;
    private static final double LEAST_FAST_M_PER_S = 0.001;
    private static final double MOST_FAST_M_PER_S = 5;

    private final EnumSet<Layer> layers = EnumSet.of(Layer.TRACERS, Layer.JETS, Layer.NAMES, Layer.STILL_WATER);
    private final EnumMap<Axis, Double> cuts = new EnumMap<>(Axis.class);
    private Optional<Axis> sliding = Optional.empty();
    private Units units = Units.METRIC;
    private boolean difference;
    private String kind = Grains.FOOD;
    private Optional<Double> fastMPerS = Optional.empty();
    private Optional<Fast> found = Optional.empty();

    /** What was found for one water, so that its cells are not counted for every picture. */
    private record Fast(Water water, double mPerS) {
    }

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

    /**
     * The speed from which water counts as fast, metres per second: the one that was asked for, or else what nine
     * tenths of this water keep below.
     */
    public double fastMPerS(Water water) {
        if (fastMPerS.isPresent()) {
            return fastMPerS.get();
        }
        if (found.isEmpty() || found.get().water() != water) {
            found = Optional.of(new Fast(water, Math.max(water.quantileMPerS(FAST_SHARE), LEAST_FAST_M_PER_S)));
        }
        return found.get().mPerS();
    }

    /** The speed that was asked for; 0.1 m/s before one was. */
    double askedFastMPerS() {
        return fastMPerS.orElse(FAST_AT_FIRST_M_PER_S);
    }

    /** Whether a speed for fast water was asked for. */
    public boolean asksForFast() {
        return fastMPerS.isPresent();
    }

    /** Asks for a speed from which water counts as fast, metres per second. */
    public void fastFrom(double mPerS) {
        fastMPerS = Optional.of(Math.max(LEAST_FAST_M_PER_S, Math.min(MOST_FAST_M_PER_S, mPerS)));
    }

    /** Lets each water say from which speed it is fast. */
    public void fastByItself() {
        fastMPerS = Optional.empty();
    }

    /** The kind of grain that is let go and shown, a word such as food. */
    public String kind() {
        return kind;
    }

    void letGo(String other) {
        kind = other;
    }

    public boolean difference() {
        return difference;
    }

    void toggleDifference() {
        difference = !difference;
    }
}
