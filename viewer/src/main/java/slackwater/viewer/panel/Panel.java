package slackwater.viewer.panel;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import slackwater.analysis.CoralReading;
import slackwater.geometry.Mesh;
import slackwater.geometry.Vec3;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.units.Unit;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.edit.Drag;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.live.LiveFlow;
import slackwater.viewer.panel.Rows.Button;
import slackwater.viewer.panel.Rows.Field;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Type;
import slackwater.viewer.scene.Units;
import slackwater.viewer.scene.Water;
import slackwater.viewer.session.Action;
import slackwater.viewer.session.Changes;
import slackwater.viewer.session.PointReading;
import slackwater.viewer.session.Session;
import slackwater.viewer.session.Side;
import slackwater.viewer.session.Status;
import slackwater.viewer.shape.Axis;

/** The controls at the left of the window. */
public final class Panel {
    /** Its width, units of type. */
    public static final double WIDTH = 304;
    private static final double EDGE = 16;
    private static final Colour GROUND = Colour.of(0xFBFCFD);

    private final Session session;
    private final Typing typing;
    private final Rows rows;

    private Panel(Session session, Typing typing, Rows rows) {
        this.session = session;
        this.typing = typing;
        this.rows = rows;
    }

    /**
     * The controls as they are now.
     *
     * @param heightUnits of the window
     * @param scrolled how far they are slid up
     * @param hover where the pointer is
     */
    public static Page page(Session session, Typing typing, Type type, double[] heightAndScrolled, double[] hover) {
        Rows rows = new Rows(type, EDGE, EDGE - heightAndScrolled[1], WIDTH - 2 * EDGE, hover);
        rows.block(0, 0, WIDTH, heightAndScrolled[0], GROUND);
        rows.block(WIDTH - 1, 0, 1, heightAndScrolled[0], Palette.GLASS);
        new Panel(session, typing, rows).fill();
        return rows.page();
    }

    private void fill() {
        head();
        session.selected().ifPresentOrElse(this::thing, this::nothing);
        point();
        show();
        views();
        file();
    }

    private Side side() {
        return session.side();
    }

    private void head() {
        rows.title(side().name() + (side().changed() ? "  (changed)" : ""));
        if (session.sides().size() == 2) {
            rows.buttons(List.of(tank(0), tank(1)));
        }
        rows.bar(Status.share(side()), side().settled() ? Palette.JET : Palette.PLAIN);
        rows.text(Status.settling(side()), Palette.SOFT_INK, 3);
        String pace = Status.pace(side());
        if (!pace.isEmpty()) {
            rows.text(pace, Palette.SOFT_INK, 2);
        }
        Optional<String> trouble = side().trouble();
        if (!session.message().isEmpty()) {
            rows.gap(4);
            rows.notice(session.showing().units().sentence(session.message()), Palette.JET);
        }
        trouble.ifPresent(says -> {
            rows.gap(4);
            rows.notice(session.showing().units().sentence(says), Palette.FAST);
        });
    }

    private Button tank(int index) {
        return new Button("tank " + index, session.sides().get(index).name(), index == 0 ? "" : "`",
                session.active() == index, true, () -> {
                    if (session.active() != index) {
                        session.perform(Action.OTHER_SIDE);
                    }
                });
    }

    private void nothing() {
        rows.heading("Nothing chosen");
        rows.text("Click a pump, coral or rock, or press Tab.", Palette.SOFT_INK, 2);
        rows.gap(4);
        rows.buttons(List.of(button(Action.ADD_CORAL, "New coral", false, side().editable()),
                button(Action.ADD_ROCK, "New rock", false, side().editable())));
    }

    private void thing(Thing thing) {
        Scenario scenario = side().scenario();
        String kind = switch (thing.kind()) {
            case PUMP -> "Pump";
            case RETURN -> "Water from the sump";
            case CORAL -> "Coral";
            case ROCK -> "Rock";
        };
        rows.heading(kind);
        rows.title(thing.name(scenario));
        place(thing.atM(scenario));
        if (thing.aims()) {
            aim(thing);
        }
        switch (thing.kind()) {
            case PUMP -> pump(scenario.pumps().get(thing.index()));
            case RETURN -> rows.value("flow", session.showing().units().flow(scenario.returnLine().orElseThrow()
                    .flowM3PerS()), Palette.INK);
            case CORAL -> coral(thing.index());
            case ROCK -> rows.buttons(List.of(button(Action.PATTERN, "Shape", false, side().editable()
                    && !(scenario.rocks().get(thing.index()).solid() instanceof Mesh))));
        }
        boolean sized = thing.kind() == Thing.Kind.CORAL || thing.kind() == Thing.Kind.ROCK;
        if (sized) {
            rows.buttons(List.of(button(Action.SMALLER, "Smaller", false, side().editable()),
                    button(Action.LARGER, "Larger", false, side().editable())));
        }
        rows.buttons(List.of(button(Action.REMOVE, "Remove", false, side().editable()
                && thing.kind() != Thing.Kind.RETURN), button(Action.LET_GO, "Let go", false, true)));
    }

    private Unit length() {
        return session.steps().unit();
    }

    private void place(Vec3 at) {
        double step = session.steps().length() * 2;
        rows.field(number("x", "from left", length().fromSi(at.x()), step, value -> change().place(
                new Vec3(length().toSi(value), at.y(), at.z()))), typing, side().editable());
        rows.field(number("y", "from front", length().fromSi(at.y()), step, value -> change().place(
                new Vec3(at.x(), length().toSi(value), at.z()))), typing, side().editable());
        rows.field(number("z", "from bottom", length().fromSi(at.z()), step, value -> change().place(
                new Vec3(at.x(), at.y(), length().toSi(value)))), typing, side().editable());
    }

    private Changes change() {
        return new Changes(session);
    }

    private Field number(String name, String words, double value, double step, DoubleConsumer take) {
        return new Field(name, words, shown(value), length().symbol(), step, take);
    }

    /** To two decimals, without needless zeros. */
    private static String shown(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value + 0.0);
        return text.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0");
    }

    private void aim(Thing thing) {
        Scenario scenario = side().scenario();
        double yaw = Drag.yaw(scenario, thing);
        double pitch = Drag.pitch(scenario, thing);
        rows.field(new Field("yaw", "aim round", shown(Math.toDegrees(yaw)), "\u00b0", 5,
                value -> change().aim(Unit.DEGREE.toSi(value), pitch)), typing, side().editable());
        rows.field(new Field("pitch", "aim up", shown(Math.toDegrees(pitch)), "\u00b0", 5,
                value -> change().aim(yaw, Unit.DEGREE.toSi(value))), typing, side().editable());
    }

    private void pump(Pump pump) {
        rows.field(new Field("output", "output", shown(100 * pump.outputFraction()), "%", 5,
                value -> change().giveOutput(Unit.PERCENT.toSi(value))), typing, side().editable());
        if (pump.outlet() instanceof Outlet.Slot) {
            rows.field(new Field("roll", "roll of slot", shown(Math.toDegrees(pump.rollRad())), "\u00b0", 15,
                    value -> change().roll(Unit.DEGREE.toSi(value))), typing, side().editable());
        }
        rows.value("", session.showing().units().flow(pump.flowM3PerS() * pump.outputFraction()
                * (1 - pump.foulingFraction())), Palette.INK);
        Pattern pattern = pump.pattern();
        rows.buttons(List.of(
                button(Action.OFF, pump.outputFraction() > 0 ? "Switch off" : "Switch on", false, side().editable()),
                button(Action.PATTERN, pattern.kind().name().toLowerCase(Locale.ROOT), false, side().editable())));
        if (pattern.kind() != Pattern.Kind.STEADY) {
            rows.field(new Field("period", "cycle", shown(pattern.periodS()), "s", 1, value -> change().givePattern(
                    new Pattern(pattern.kind(), Math.max(0.5, Math.min(3600, value)), pattern.lowFraction(),
                            pattern.phaseFraction()))), typing, side().editable());
            rows.field(new Field("low", "low part", shown(100 * pattern.lowFraction()), "%", 5,
                    value -> change().givePattern(new Pattern(pattern.kind(), pattern.periodS(),
                            Unit.PERCENT.toSi(Math.max(0, Math.min(100, value))), pattern.phaseFraction()))), typing,
                    side().editable());
        }
    }

    private void coral(int index) {
        rows.buttons(List.of(button(Action.PATTERN, side().scenario().corals().get(index).group().name()
                .toLowerCase(Locale.ROOT).replace('_', '-'), false, side().editable())));
        rows.value("size", shown(length().fromSi(side().scenario().corals().get(index).sizeM())) + " "
                + length().symbol(), Palette.INK);
        List<CoralReading> readings = side().readings();
        if (readings.isEmpty()) {
            rows.value("speed", "not known yet", Palette.PLAIN);
            return;
        }
        CoralReading reading = readings.get(index);
        Units units = session.showing().units();
        Colour ink = side().settled() ? Palette.INK : Palette.PLAIN;
        rows.value("speed", units.speed(reading.reading().meanMPerS()) + " " + units.speedUnit(), ink);
        rows.value("wants", units.speed(reading.range().lowMPerS()) + " to "
                + units.speed(reading.range().highMPerS()) + " " + units.speedUnit(), ink);
        rows.value(side().flow().isPresent() ? "so far" : "verdict", side().flow().isPresent()
                ? Status.suits(reading) : reading.verdict().symbol() + " " + reading.verdict().word(), ink);
        rows.gap(3);
    }

    private void point() {
        Optional<Vec3> point = session.pointM();
        if (point.isEmpty()) {
            return;
        }
        Vec3 at = point.get();
        rows.heading("Measuring point (M)");
        rows.text(String.format(Locale.ROOT, "%.1f, %.1f, %.1f %s from left, front, bottom", length().fromSi(at.x()),
                length().fromSi(at.y()), length().fromSi(at.z()), length().symbol()), Palette.INK, 2);
        Optional<PointReading> reading = side().mean().flatMap(mean -> PointReading.of(mean, at));
        if (reading.isEmpty()) {
            rows.text(side().mean().isEmpty() ? "Not known yet." : "No water there.", Palette.PLAIN, 1);
            return;
        }
        Colour ink = side().settled() ? Palette.INK : Palette.PLAIN;
        Units units = session.showing().units();
        rows.value("speed", units.speed(reading.get().meanMPerS()) + " " + units.speedUnit(), ink);
        rows.value("r.m.s.", units.speed(reading.get().rmsMPerS()) + " " + units.speedUnit(), ink);
        rows.text("flows " + reading.get().direction(), ink, 2);
        if (!reading.get().direction().equals("to and fro")) {
            rows.value("", reading.get().angles(), ink);
        }
    }

    private void show() {
        rows.heading("Show");
        rows.buttons(List.of(layer(Action.STILL_WATER, "Still water", Layer.STILL_WATER),
                layer(Action.TRACERS, "Specks", Layer.TRACERS)));
        rows.buttons(List.of(layer(Action.STREAMLINES, "Streamlines", Layer.STREAMLINES),
                layer(Action.FAST_WATER, "Fast water", Layer.FAST_WATER)));
        fast();
        boolean grains = side().water().map(water -> !water.deposits().isEmpty()).orElse(false);
        rows.buttons(List.of(layer(Action.SHEAR, "Shear", Layer.SHEAR), button(Action.DEPOSIT, "Deposit",
                session.showing().layers().contains(Layer.DEPOSIT), grains)));
        rows.buttons(List.of(layer(Action.JETS, "Jets", Layer.JETS), layer(Action.NAMES, "Names", Layer.NAMES)));
        rows.buttons(List.of(button(Action.PAUSE, "Pause", side().flow().map(LiveFlow::paused).orElse(false),
                side().flow().isPresent()), button(Action.DIFFERENCE, "Difference", session.showing().difference(),
                        session.sides().size() == 2)));
        rows.buttons(List.of(cut(Action.SLICE_X, Axis.X), cut(Action.SLICE_Y, Axis.Y), cut(Action.SLICE_Z, Axis.Z)));
        for (Axis axis : Axis.values()) {
            session.showing().cut(axis).ifPresent(at -> slider(axis, at));
        }
    }

    /** From which speed water counts as fast: a number, and back to what nine tenths of the water keep below. */
    private void fast() {
        Optional<Water> water = side().water();
        if (!session.showing().shows(Layer.FAST_WATER) || water.isEmpty()) {
            return;
        }
        Units units = session.showing().units();
        rows.field(new Field("fast", "fast above", shown(Math.rint(10 * units
                .speedNumber(session.showing().fastMPerS(water.get()))) / 10),
                units.speedUnit(), units == Units.METRIC ? 1 : 0.5, value ->
                        session.showing().fastFrom(units.speedMPerS(value))), typing, true);
        if (session.showing().asksForFast()) {
            rows.buttons(List.of(new Button("fast by itself", "Fastest tenth of the water", "", false, true,
                    () -> session.showing().fastByItself())));
        }
    }

    private void slider(Axis axis, double atM) {
        double most = axis.of(side().scenario().tank().insideM());
        rows.field(number("slice " + axis, "slice " + axis.name().toLowerCase(Locale.ROOT), length().fromSi(atM),
                session.steps().length() * 2, value -> session.showing().slideTo(axis, length().toSi(value),
                        side().scenario().tank().insideM())), typing, most > 0);
    }

    private Button layer(Action action, String words, Layer layer) {
        return button(action, words, session.showing().layers().contains(layer), true);
    }

    private Button cut(Action action, Axis axis) {
        return button(action, "Slice", session.showing().cut(axis).isPresent(), true);
    }

    private void views() {
        rows.heading("Look from");
        rows.buttons(List.of(button(Action.VIEW_FRONT, "Front", false, true),
                button(Action.VIEW_SIDE, "Side", false, true)));
        rows.buttons(List.of(button(Action.VIEW_TOP, "Top", false, true),
                button(Action.VIEW_CORNER, "Corner", false, true)));
    }

    private void file() {
        rows.heading("Layout");
        rows.buttons(List.of(button(Action.UNDO, "Undo", false, side().canUndo()),
                button(Action.REDO, "Redo", false, side().canRedo())));
        rows.buttons(List.of(button(Action.SAVE, "Save", false, side().editable() && side().changed()),
                button(Action.SCREENSHOT, "Picture", false, true)));
        rows.buttons(List.of(button(Action.UNITS, session.showing().units() == Units.METRIC ? "cm, l/h" : "in, gal/h",
                false, true), button(Action.HELP, "All keys", session.help(), true)));
    }

    private Button button(Action action, String words, boolean on, boolean able) {
        return new Button(action.name(), words, action.strokes().get(0).words(), on, able,
                () -> session.perform(action));
    }
}
