package slackwater.viewer.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.scene.Composer;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Legend;
import slackwater.viewer.scene.Look;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.StreamParts;
import slackwater.viewer.scene.Water;
import slackwater.viewer.shape.SliceSheet.Cut;

/**
 * What the water does in one tank's picture, each layer and each slice made by itself: what is switched off is gone at
 * once, and nothing else is made anew for it. Until a layer's next picture is made, its last one stands with the legend
 * that belongs to it.
 */
final class Wet {
    /** Layers that need no more than the water, in the order of their legends. */
    private static final List<Layer> PLAIN = List.of(Layer.STREAMLINES, Layer.SHEAR, Layer.DEPOSIT, Layer.STILL_WATER,
            Layer.FAST_WATER);

    private final Executor elsewhere;
    private final Map<Object, Lasting<Part>> kept = new HashMap<>();

    /** One layer, and the speed from which water counted as fast in it. */
    private record Part(List<Item> items, List<Legend> legends, double fastMPerS) {
    }

    /**
     * All of them.
     *
     * @param mapped whether a map lies on sand and rock
     * @param fastMPerS from which speed water counts as fast in the picture; empty where none is shown
     */
    record Picture(List<Item> items, List<Legend> legends, boolean mapped, Optional<Double> fastMPerS) {
    }

    /** @param elsewhere where surfaces are made */
    Wet(Executor elsewhere) {
        this.elsewhere = elsewhere;
    }

    /** @param topMPerS the speed where colours end */
    Picture draw(Session session, Side side, Water water, double topMPerS) {
        Scenario scenario = side.scenario();
        Showing showing = session.showing();
        double fast = showing.fastMPerS(water);
        Map<Object, Optional<Part>> parts = new LinkedHashMap<>();
        for (Cut cut : showing.cuts()) {
            Look look = new Look(Set.of(Layer.SPEED), List.of(cut), topMPerS, fast, showing.units());
            parts.put(cut.axis(), part(cut.axis(), List.of(water, cut, topMPerS, showing.units(), scenario.tank()),
                    () -> made(scenario, water, look)));
        }
        boolean heaps = showing.shows(Layer.DEPOSIT) && !water.deposits().isEmpty();
        for (Layer layer : PLAIN) {
            boolean wanted = switch (layer) {
                case STILL_WATER -> side.knowsStillWater();
                case SHEAR -> !heaps;
                case DEPOSIT -> heaps;
                default -> true;
            };
            if (wanted && showing.shows(layer)) {
                Look look = new Look(Set.of(layer), List.of(), topMPerS, fast, showing.units());
                // Maps lie on the sand and rock of the layout, and streamlines begin at its pumps.
                parts.put(layer, part(layer, List.of(water, look, scenario.tank(), scenario.rocks(),
                        layer == Layer.STREAMLINES ? scenario.pumps() : List.of()),
                        () -> made(scenario, water, look)));
            }
        }
        session.pointM().ifPresent(point -> parts.put(point.getClass(), part(point.getClass(),
                List.of(water, point, topMPerS, showing.units()), () -> through(point, water, topMPerS, showing))));
        kept.keySet().retainAll(parts.keySet());
        return together(parts);
    }

    private Optional<Part> part(Object key, List<Object> from, Supplier<Part> maker) {
        return kept.computeIfAbsent(key, fresh -> new Lasting<>(elsewhere)).of(from, maker);
    }

    private static Part made(Scenario scenario, Water water, Look look) {
        Drawing drawing = Composer.water(new Scene(scenario, Optional.of(water), List.of()), look);
        return new Part(drawing.items(), drawing.legends(), look.fastMPerS());
    }

    private static Part through(Vec3 point, Water water, double topMPerS, Showing showing) {
        return new Part(StreamParts.through(point, water, showing.units().speedScale(topMPerS)), List.of(), 0);
    }

    private static Picture together(Map<Object, Optional<Part>> parts) {
        List<Item> items = new ArrayList<>();
        List<Legend> legends = new ArrayList<>();
        parts.values().forEach(part -> part.ifPresent(made -> {
            items.addAll(made.items());
            made.legends().stream().filter(legend -> !legends.contains(legend)).forEach(legends::add);
        }));
        boolean mapped = List.of(Layer.SHEAR, Layer.DEPOSIT).stream()
                .anyMatch(layer -> parts.getOrDefault(layer, Optional.empty()).isPresent());
        return new Picture(items, legends, mapped,
                parts.getOrDefault(Layer.FAST_WATER, Optional.empty()).map(Part::fastMPerS));
    }
}
