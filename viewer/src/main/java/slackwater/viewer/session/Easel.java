package slackwater.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import slackwater.analysis.CoralReading;
import slackwater.field.Velocity;
import slackwater.geometry.Mesh;
import slackwater.scenario.Scenario;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.Composer;
import slackwater.viewer.scene.CoralParts;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.GrainParts;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Label;
import slackwater.viewer.scene.Labels;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Legend;
import slackwater.viewer.scene.Look;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.PumpParts;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.TankParts;
import slackwater.viewer.scene.Units;
import slackwater.viewer.scene.Water;
import slackwater.viewer.scene.WaterParts;
import slackwater.viewer.shape.Current;
import slackwater.viewer.shape.Polylines;
import slackwater.viewer.shape.Tracers;

/**
 * Puts the picture of one tank together, over and over: what has not changed since the last picture is the same object
 * again, so that only what is new is made and sent to the graphics card.
 */
public final class Easel {
    private static final int SPECKS = 1800;
    private static final double TRAIL_S = 0.35;
    private static final int TRAIL_PIECES = 4;
    private static final double LONGEST_STEP_S = 0.1;

    private static final Wet.Picture DRY = new Wet.Picture(List.of(), List.of(), false, Optional.empty());

    /** What the still part of a picture is made of. */
    private record Still(List<Object> from, List<Item> items) {
    }

    /** What the specks are drawn from, and the specks. */
    private record Drift(Polylines trails, ColourScale scale, Item specks) {
    }

    private final Lasting<List<Item>> tank;
    private final Wet wet;
    private final Handles handles = new Handles();
    private Still pumps = new Still(List.of(), List.of());
    private Still grains = new Still(List.of(), List.of());
    private Still corals = new Still(List.of(), List.of());
    private Optional<Drift> drift = Optional.empty();
    private Optional<Polylines> trails = Optional.empty();
    private Optional<Velocity> carrier = Optional.empty();
    private Optional<Tracers> tracers = Optional.empty();

    /** Makes everything where it is asked for. */
    public Easel() {
        this(Runnable::run);
    }

    /**
     * @param elsewhere where surfaces of the water, and of scanned rock, are made; until they are, the ones before are
     *     shown
     */
    public Easel(Executor elsewhere) {
        tank = new Lasting<>(elsewhere);
        wet = new Wet(elsewhere);
    }

    /**
     * The picture of a tank.
     *
     * @param topMPerS the speed where colours end, for all tanks of the window
     * @param elapsedS by how much the specks drift since the last picture, seconds
     */
    public Drawing draw(Session session, Side side, double topMPerS, double elapsedS) {
        Scenario scenario = side.scenario();
        Showing showing = session.showing();
        Wet.Picture picture = side.water().map(water -> wet.draw(session, side, water, topMPerS)).orElse(DRY);
        side.drew(picture.fastMPerS());
        List<Item> items = new ArrayList<>(tank(scenario, picture.mapped()));
        boolean cones = showing.shows(Layer.JETS);
        pumps = kept(pumps, List.of(scenario.pumps(), scenario.returnLine(), cones, scenario.tank()),
                () -> PumpParts.of(scenario, cones));
        corals = kept(corals, List.of(scenario.corals()), () -> CoralParts.of(scenario));
        items.addAll(pumps.items());
        items.addAll(corals.items());
        items.addAll(picture.items());
        List<Legend> legends = new ArrayList<>(picture.legends());
        legends.addAll(Composer.water(Scene.of(scenario), new Look(showing.layers(), List.of(), topMPerS, topMPerS,
                showing.units())).legends());
        ColourScale scale = showing.units().speedScale(topMPerS);
        if (showing.shows(Layer.TRACERS)) {
            drift(side, elapsedS).ifPresent(now -> items.add(specks(now, scale)));
            boolean told = legends.stream().anyMatch(legend -> legend instanceof Legend.Bar bar
                    && bar.scale().equals(scale));
            if (!told && tracers.isPresent()) {
                legends.add(0, new Legend.Bar("speed, " + scale.unit(), scale));
            }
        }
        if (showing.shows(Layer.GRAINS)) {
            side.crumbs(showing.kind()).ifPresent(crumbs -> {
                double wide = session.frame().widthUnits();
                grains = kept(grains, List.of(crumbs, wide), () -> GrainParts.of(crumbs, scenario.tank().insideM(),
                        wide));
                items.addAll(grains.items());
                legends.add(GrainParts.legend(crumbs));
            });
        }
        boolean chosen = session.side() == side;
        items.addAll(handles.of(session, scenario, chosen ? session.selected() : Optional.empty()));
        // The panel tells of what is chosen; its label would only lie over its handle.
        Optional<String> told = chosen ? session.selected().map(thing -> thing.name(scenario)) : Optional.empty();
        List<Label> labels = showing.shows(Layer.NAMES) ? labels(side, showing.units()).stream()
                .filter(label -> !told.equals(Optional.of(label.title()))).toList() : List.of();
        boolean awaited = showing.shows(Layer.STILL_WATER) && !side.knowsStillWater();
        List<String> notes = Status.notes(side, showing.units(), awaited, session.frame().widthUnits());
        return new Drawing(scenario.name(), notes, items, labels, Legend.gathered(legends), Scene.of(scenario).glassM(),
                showing.units().rulers());
    }

    private interface Making {
        List<Item> items();
    }

    private static Still kept(Still known, List<Object> from, Making making) {
        return known.from().equals(from) ? known : new Still(from, making.items());
    }

    /** Follows the pointer at once; only the many triangles of a scan come a little later. */
    private List<Item> tank(Scenario scenario, boolean mapped) {
        List<Object> from = List.of(scenario.tank(), scenario.rocks(), scenario.overflow());
        Optional<List<Item>> first = scenario.rocks().stream().anyMatch(rock -> rock.solid() instanceof Mesh)
                ? tank.of(from, () -> TankParts.of(scenario)) : Optional.empty();
        List<Item> all = first.orElseGet(() -> tank.now(from, () -> TankParts.of(scenario)));
        // Rock gives way to its map.
        return mapped ? all.stream().filter(item -> !item.paint().colour().equals(Palette.ROCK)).toList() : all;
    }

    /** The same object as long as the specks stand still. */
    private Item specks(Polylines now, ColourScale scale) {
        drift = drift.filter(same -> same.trails() == now && same.scale().equals(scale))
                .or(() -> Optional.of(new Drift(now, scale, WaterParts.specks(now, scale))));
        return drift.get().specks();
    }

    /** Lets the specks drift with the water of this moment. */
    private Optional<Polylines> drift(Side side, double elapsedS) {
        Optional<Velocity> now = side.velocity();
        if (now.isEmpty()) {
            return Optional.empty();
        }
        boolean other = carrier.isEmpty() || carrier.get().u() != now.get().u();
        if (other) {
            Current current = new Current(now.get().grid(), now.get().fluid(), now.get().u(), now.get().v(),
                    now.get().w());
            tracers.ifPresent(known -> known.follow(current));
            tracers = tracers.or(() -> Optional.of(new Tracers(current, SPECKS, 1)));
            carrier = now;
        }
        boolean still = side.flow().map(flow -> flow.paused() || flow.resting()).orElse(false);
        if (!still || other || trails.isEmpty()) {
            tracers.get().advance(still ? 0 : Math.min(LONGEST_STEP_S, elapsedS));
            trails = Optional.of(tracers.get().trails(TRAIL_S, TRAIL_PIECES));
        }
        return trails;
    }

    private static List<Label> labels(Side side, Units units) {
        List<Label> labels = Labels.of(new Scene(side.scenario(), side.water().map(water -> new Water(water.flow(),
                water.stillProbability(), side.settled())), side.readings()), units);
        List<CoralReading> readings = side.readings();
        if (side.flow().isEmpty() || readings.isEmpty()) {
            return labels;
        }
        // Water under way is of one grid, and mostly a coarse one: it tells of speeds and leaves verdicts to a run.
        List<Label> told = new ArrayList<>(labels);
        for (int n = 0; n < readings.size(); n++) {
            Label label = labels.get(n);
            told.set(n, new Label(label.atM(), label.radiusM(), label.title(), Status.reading(readings.get(n), units),
                    Status.accent(readings.get(n)), label.pale()));
        }
        return told;
    }
}
