package slackwater.viewer.panel;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slackwater.geometry.Vec3;
import slackwater.units.Unit;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.live.LiveFlow;
import slackwater.viewer.panel.Rows.Button;
import slackwater.viewer.panel.Rows.Field;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Type;
import slackwater.viewer.scene.Units;
import slackwater.viewer.scene.Water;
import slackwater.viewer.session.Action;
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
    private final Chosen chosen;

    private Panel(Session session, Typing typing, Rows rows) {
        this.session = session;
        this.typing = typing;
        this.rows = rows;
        this.chosen = new Chosen(session, typing, rows);
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
        chosen.fill();
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

    private Unit length() {
        return session.steps().unit();
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
        grains();
        rows.buttons(List.of(layer(Action.JETS, "Jets", Layer.JETS), layer(Action.NAMES, "Names", Layer.NAMES)));
        rows.buttons(List.of(button(Action.PAUSE, "Pause", side().flow().map(LiveFlow::paused).orElse(false),
                side().flow().isPresent()), button(Action.DIFFERENCE, "Difference", session.showing().difference(),
                        session.sides().size() == 2)));
        rows.buttons(List.of(cut(Action.SLICE_X, Axis.X), cut(Action.SLICE_Y, Axis.Y), cut(Action.SLICE_Z, Axis.Z)));
        for (Axis axis : Axis.values()) {
            session.showing().cut(axis).ifPresent(at -> slider(axis, at));
        }
    }

    /** Grains on or off; where they are on, their kind, and a pinch of them. */
    private void grains() {
        boolean on = session.showing().shows(Layer.GRAINS);
        boolean live = side().flow().isPresent();
        boolean ended = side().water().map(water -> !water.crumbs().isEmpty()).orElse(false);
        rows.buttons(List.of(button(Action.GRAINS, on ? "Grains" : "Let grains fall", on, live || ended)));
        if (on) {
            rows.buttons(List.of(button(Action.GRAIN_KIND, session.showing().kind(), false, true),
                    button(Action.GRAIN_PINCH, "Pinch", false, live && session.pointM().isPresent())));
        }
    }

    /** From which speed water counts as fast: a number, and back to what nine tenths of the water keep below. */
    private void fast() {
        Optional<Water> water = side().water();
        if (!session.showing().shows(Layer.FAST_WATER) || water.isEmpty()) {
            return;
        }
        Units units = session.showing().units();
        // By itself the speed is that of the picture, which comes a little later than the water.
        double fast = session.showing().asksForFast() ? session.showing().fastMPerS(water.get())
                : side().drawnFastMPerS().orElseGet(() -> session.showing().fastMPerS(water.get()));
        rows.field(new Field("fast", "fast above", Rows.shown(Math.rint(10 * units.speedNumber(fast)) / 10),
                units.speedUnit(), units == Units.METRIC ? 1 : 0.5, value ->
                        session.showing().fastFrom(units.speedMPerS(value))), typing, true);
        if (session.showing().asksForFast()) {
            rows.buttons(List.of(new Button("fast by itself", "Fastest tenth of the water", "", false, true,
                    () -> session.showing().fastByItself())));
        }
    }

    private void slider(Axis axis, double atM) {
        double most = axis.of(side().scenario().tank().insideM());
        rows.field(Field.of("slice " + axis, "slice " + axis.name().toLowerCase(Locale.ROOT), length(), atM,
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
        return Button.of(session, action, words, on, able);
    }
}
