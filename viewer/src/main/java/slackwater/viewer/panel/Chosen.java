package slackwater.viewer.panel;

import java.util.List;
import java.util.Locale;
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
import slackwater.viewer.panel.Rows.Button;
import slackwater.viewer.panel.Rows.Field;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Units;
import slackwater.viewer.session.Action;
import slackwater.viewer.session.Changes;
import slackwater.viewer.session.Session;
import slackwater.viewer.session.Side;
import slackwater.viewer.session.Status;

/** The controls of what is chosen: a pump, the return, a coral or a rock. */
final class Chosen {
    private final Session session;
    private final Typing typing;
    private final Rows rows;

    Chosen(Session session, Typing typing, Rows rows) {
        this.session = session;
        this.typing = typing;
        this.rows = rows;
    }

    void fill() {
        session.selected().ifPresentOrElse(this::thing, this::nothing);
    }

    private Side side() {
        return session.side();
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
        rows.field(Field.of("x", "from left", length(), at.x(), step, value -> change().place(
                new Vec3(length().toSi(value), at.y(), at.z()))), typing, side().editable());
        rows.field(Field.of("y", "from front", length(), at.y(), step, value -> change().place(
                new Vec3(at.x(), length().toSi(value), at.z()))), typing, side().editable());
        rows.field(Field.of("z", "from bottom", length(), at.z(), step, value -> change().place(
                new Vec3(at.x(), at.y(), length().toSi(value)))), typing, side().editable());
    }

    private Changes change() {
        return new Changes(session);
    }

    private void aim(Thing thing) {
        Scenario scenario = side().scenario();
        double yaw = Drag.yaw(scenario, thing);
        double pitch = Drag.pitch(scenario, thing);
        rows.field(new Field("yaw", "aim round", Rows.shown(Math.toDegrees(yaw)), "\u00b0", 5,
                value -> change().aim(Unit.DEGREE.toSi(value), pitch)), typing, side().editable());
        rows.field(new Field("pitch", "aim up", Rows.shown(Math.toDegrees(pitch)), "\u00b0", 5,
                value -> change().aim(yaw, Unit.DEGREE.toSi(value))), typing, side().editable());
    }

    private void pump(Pump pump) {
        rows.field(new Field("output", "output", Rows.shown(100 * pump.outputFraction()), "%", 5,
                value -> change().giveOutput(Unit.PERCENT.toSi(value))), typing, side().editable());
        if (pump.outlet() instanceof Outlet.Slot) {
            rows.field(new Field("roll", "roll of slot", Rows.shown(Math.toDegrees(pump.rollRad())), "\u00b0", 15,
                    value -> change().roll(Unit.DEGREE.toSi(value))), typing, side().editable());
        }
        rows.value("", session.showing().units().flow(pump.flowM3PerS() * pump.outputFraction()
                * (1 - pump.foulingFraction())), Palette.INK);
        Pattern pattern = pump.pattern();
        rows.buttons(List.of(
                button(Action.OFF, pump.outputFraction() > 0 ? "Switch off" : "Switch on", false, side().editable()),
                button(Action.PATTERN, pattern.kind().name().toLowerCase(Locale.ROOT), false, side().editable())));
        if (pattern.kind() != Pattern.Kind.STEADY) {
            rows.field(new Field("period", "cycle", Rows.shown(pattern.periodS()), "s", 1,
                    value -> change().givePattern(new Pattern(pattern.kind(), Math.max(0.5, Math.min(3600, value)),
                            pattern.lowFraction(), pattern.phaseFraction()))), typing, side().editable());
            rows.field(new Field("low", "low part", Rows.shown(100 * pattern.lowFraction()), "%", 5,
                    value -> change().givePattern(new Pattern(pattern.kind(), pattern.periodS(),
                            Unit.PERCENT.toSi(Math.max(0, Math.min(100, value))), pattern.phaseFraction()))), typing,
                    side().editable());
        }
    }

    private void coral(int index) {
        rows.buttons(List.of(button(Action.PATTERN, side().scenario().corals().get(index).group().name()
                .toLowerCase(Locale.ROOT).replace('_', '-'), false, side().editable())));
        rows.value("size", Rows.shown(length().fromSi(side().scenario().corals().get(index).sizeM())) + " "
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

    private Button button(Action action, String words, boolean on, boolean able) {
        return Button.of(session, action, words, on, able);
    }
}
