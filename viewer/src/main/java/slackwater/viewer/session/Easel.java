package slackwater.viewer.session;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import slackwater.analysis.CoralReading;
import slackwater.field.Velocity;
import slackwater.geometry.Mesh;
import slackwater.geometry.Vec3;
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
import slackwater.viewer.scene.StreamParts;
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

    /** What the still part of a picture is made of. */
    private record Still(List<Object> from, List<Item> items) {
    }

    /** What the specks are drawn from, and the specks. */
    private record Drift(Polylines trails, ColourScale scale, Item specks) {
    }

    private final Lasting<List<Item>> tank;
    private final Lasting<Drawing> wet;
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
        wet = new Lasting<>(elsewhere);
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
        List<Item> items = new ArrayList<>();
        boolean mapped = side.water().map(water -> showing.shows(Layer.SHEAR)
                || showing.shows(Layer.DEPOSIT) && !water.deposits().isEmpty()).orElse(false);
        items.addAll(tank(scenario, mapped));
        boolean cones = showing.shows(Layer.JETS);
        pumps = kept(pumps, List.of(scenario.pumps(), scenario.returnLine(), cones, scenario.tank()),
                () -> PumpParts.of(scenario, cones));
        corals = kept(corals, List.of(scenario.corals()), () -> CoralParts.of(scenario));
        items.addAll(pumps.items());
        items.addAll(corals.items());
        Optional<Drawing> made = side.water().flatMap(water -> wet(session, side, water, topMPerS));
        made.ifPresent(drawing -> items.addAll(drawing.items()));
        List<Legend> legends = new ArrayList<>(made.orElseGet(() -> Composer.water(Scene.of(scenario),
                new Look(showing.layers(), List.of(), topMPerS, topMPerS, showing.units()))).legends());
        ColourScale scale = showing.units().speedScale(topMPerS);
        if (showing.shows(Layer.TRACERS)) {
            drift(side, elapsedS).ifPresent(now -> items.add(specks(now, scale)));
            if (legends.stream().noneMatch(Legend.Bar.class::isInstance) && tracers.isPresent()) {
                legends.add(0, new Legend.Bar("speed, " + scale.unit(), scale));
            }
        }
        if (showing.shows(Layer.GRAINS)) {
            side.crumbs(showing.kind()).ifPresent(crumbs -> {
                grains = kept(grains, List.of(crumbs), () -> GrainParts.of(crumbs, scenario.tank().insideM()));
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
        return new Drawing(scenario.name(), notes, items, labels, legends, Scene.of(scenario).glassM(),
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
        List<Object> from = List.of(scenario.tank(), scenario.rocks(), scenario.overflow(), mapped);
        Optional<List<Item>> first = scenario.rocks().stream().anyMatch(rock -> rock.solid() instanceof Mesh)
                ? tank.of(from, () -> made(scenario, mapped)) : Optional.empty();
        return first.orElseGet(() -> tank.now(from, () -> made(scenario, mapped)));
    }

    private static List<Item> made(Scenario scenario, boolean mapped) {
        return TankParts.of(scenario).stream().filter(item -> !mapped
                || !item.paint().colour().equals(Palette.ROCK)).toList();
    }

    private Optional<Drawing> wet(Session session, Side side, Water water, double topMPerS) {
        Set<Layer> layers = EnumSet.noneOf(Layer.class);
        layers.addAll(session.showing().layers());
        layers.removeAll(EnumSet.of(Layer.TRACERS, Layer.NAMES, Layer.GRAINS));
        if (!side.knowsStillWater()) {
            layers.remove(Layer.STILL_WATER);
        }
        Scenario scenario = side.scenario();
        Optional<Vec3> point = session.pointM();
        Look look = new Look(layers, session.showing().cuts(), topMPerS, session.showing().fastMPerS(water),
                session.showing().units());
        // Maps lie on the sand and rock of the layout, and streamlines begin at its pumps.
        return wet.of(List.of(water, look, point, scenario.tank(), scenario.rocks(),
                look.shows(Layer.STREAMLINES) ? scenario.pumps() : List.of()), () -> {
            Drawing drawing = Composer.water(new Scene(scenario, Optional.of(water), List.of()), look);
            List<Item> items = new ArrayList<>(drawing.items());
            point.ifPresent(at -> items.addAll(StreamParts.through(at, water, look.units().speedScale(topMPerS))));
            return new Drawing("", List.of(), items, List.of(), drawing.legends(), drawing.boxM());
        });
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
