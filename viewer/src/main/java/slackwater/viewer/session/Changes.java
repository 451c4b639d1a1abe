package slackwater.viewer.session;

import java.util.Optional;
import java.util.function.Function;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.units.Unit;
import slackwater.viewer.edit.Drag;
import slackwater.viewer.edit.Edits;
import slackwater.viewer.edit.Pick;
import slackwater.viewer.edit.Thing;
import slackwater.viewer.edit.Thing.Kind;

/** What keys and buttons change in a layout. */
public final class Changes {
    private static final double OUTPUT_STEP = 0.05;
    private static final double AIM_RAD = Unit.DEGREE.toSi(5);
    private static final double LARGER = 1.1;
    private static final double NEW_CORAL_M = 0.1;
    private static final double NEW_ROCK_M = 0.08;
    private static final double LEAST_PERIOD_S = 1;
    private static final double MOST_PERIOD_S = 600;

    private final Session session;
    private final Side side;

    public Changes(Session session) {
        this.session = session;
        this.side = session.side();
    }

    void perform(Action action) {
        if (!side.editable() && session.selected().isPresent() && !isMove(action)) {
            session.say("A finished result stays as it is; open its scenario to change the layout.");
            return;
        }
        double step = session.steps().lengthM() * 2;
        switch (action) {
            case MOVE_LEFT -> move(new Vec3(-step, 0, 0), Action.ORBIT_LEFT);
            case MOVE_RIGHT -> move(new Vec3(step, 0, 0), Action.ORBIT_RIGHT);
            case MOVE_UP -> move(new Vec3(0, 0, step), Action.ORBIT_UP);
            case MOVE_DOWN -> move(new Vec3(0, 0, -step), Action.ORBIT_DOWN);
            case MOVE_BACK -> move(new Vec3(0, step, 0), Action.NEARER);
            case MOVE_FRONT -> move(new Vec3(0, -step, 0), Action.FARTHER);
            case AIM_LEFT -> turn(AIM_RAD, 0);
            case AIM_RIGHT -> turn(-AIM_RAD, 0);
            case AIM_UP -> turn(0, AIM_RAD);
            case AIM_DOWN -> turn(0, -AIM_RAD);
            case OUTPUT_LESS -> pump("output", pump -> output(pump.outputFraction() - OUTPUT_STEP));
            case OUTPUT_MORE -> pump("output", pump -> output(pump.outputFraction() + OUTPUT_STEP));
            case OFF -> pump("off", this::switched);
            case PATTERN -> chosen("pattern", this::next);
            case PERIOD_SHORTER -> pump("period", pump -> pattern(period(pump.pattern(), -1)));
            case PERIOD_LONGER -> pump("period", pump -> pattern(period(pump.pattern(), 1)));
            case ADD_CORAL -> addCoral();
            case ADD_ROCK -> addRock();
            case LARGER -> chosen("size", thing -> Edits.resized(now(), thing, LARGER));
            case SMALLER -> chosen("size", thing -> Edits.resized(now(), thing, 1 / LARGER));
            case REMOVE -> remove();
            default -> throw new IllegalArgumentException(action + " changes no layout");
        }
    }

    private static boolean isMove(Action action) {
        return action.name().startsWith("MOVE_");
    }

    private Scenario now() {
        return side.scenario();
    }

    private void move(Vec3 byM, Action otherwise) {
        Optional<Thing> thing = session.selected();
        if (thing.isPresent() && side.editable()) {
            Vec3 to = session.steps().place(thing.get().atM(now()).plus(byM));
            side.layout().change("move " + thing.get(), Edits.moved(now(), thing.get(), to));
        } else if (thing.isEmpty() && session.pointM().isPresent()) {
            Vec3 inside = now().tank().insideM();
            Vec3 to = session.steps().place(session.pointM().get().plus(byM));
            session.point(Optional.of(new Vec3(within(to.x(), inside.x()), within(to.y(), inside.y()),
                    within(to.z(), now().tank().waterLevelM()))));
        } else {
            session.perform(otherwise);
        }
    }

    private static double within(double value, double most) {
        return Math.max(0, Math.min(most, value));
    }

    private void turn(double byYawRad, double byPitchRad) {
        chosen("aim", thing -> aim(thing, Drag.yaw(now(), thing) + byYawRad, Drag.pitch(now(), thing) + byPitchRad));
    }

    private Scenario aim(Thing thing, double yawRad, double pitchRad) {
        return Edits.aimed(now(), thing, session.steps().angle(yawRad), session.steps().angle(pitchRad));
    }

    /** Off, or on again at the output from before. */
    private Scenario switched(Pump pump) {
        if (pump.outputFraction() > 0) {
            side.rememberOutput(pump.name(), pump.outputFraction());
            return output(0);
        }
        return output(side.outputBefore(pump.name()));
    }

    /** The next pattern of a pump, group of a coral, or shape of a rock. */
    private Scenario next(Thing thing) {
        return switch (thing.kind()) {
            case PUMP -> pattern(Edits.nextPattern(now().pumps().get(thing.index()).pattern()));
            case CORAL, ROCK -> Edits.nextKind(now(), thing);
            case RETURN -> now();
        };
    }

    /** Turns the slot of the chosen pump about its aim, radians. */
    public void roll(double rollRad) {
        pump("roll", pump -> Edits.rolled(now(), session.selected().orElseThrow().index(), rollRad));
    }

    /** Gives what is chosen a place, metres. */
    public void place(Vec3 toM) {
        chosen("place", thing -> Edits.moved(now(), thing, toM));
    }

    /** Gives what is chosen an aim, radians. */
    public void aim(double yawRad, double pitchRad) {
        chosen("aim", thing -> aim(thing, yawRad, pitchRad));
    }

    /** Gives the chosen pump an output, 0 to 1. */
    public void giveOutput(double fraction) {
        pump("output", pump -> output(fraction));
    }

    /** Gives the chosen pump a pattern. */
    public void givePattern(Pattern pattern) {
        pump("pattern", pump -> pattern(pattern));
    }

    private Scenario output(double fraction) {
        double percent = Math.rint(Unit.PERCENT.fromSi(Math.max(0, Math.min(1, fraction))));
        return Edits.output(now(), session.selected().orElseThrow().index(), Unit.PERCENT.toSi(percent));
    }

    private Scenario pattern(Pattern pattern) {
        return Edits.pattern(now(), session.selected().orElseThrow().index(), pattern);
    }

    private static Pattern period(Pattern pattern, int way) {
        double step = pattern.periodS() + (way < 0 ? -0.5 : 0) >= 20 ? 5 : 1;
        double period = Math.max(LEAST_PERIOD_S, Math.min(MOST_PERIOD_S, pattern.periodS() + way * step));
        return pattern.kind() == Pattern.Kind.STEADY ? pattern
                : new Pattern(pattern.kind(), period, pattern.lowFraction(), pattern.phaseFraction());
    }

    private void pump(String kind, Function<Pump, Scenario> change) {
        chosen(kind, thing -> {
            if (thing.kind() != Kind.PUMP) {
                session.say("Choose a pump first (Tab).");
                return now();
            }
            return change.apply(now().pumps().get(thing.index()));
        });
    }

    private void chosen(String kind, Function<Thing, Scenario> change) {
        if (!side.editable()) {
            session.say("A finished result stays as it is; open its scenario to change the layout.");
            return;
        }
        session.selected().ifPresentOrElse(thing -> side.layout().change(kind + " " + thing, change.apply(thing)),
                () -> session.say("Choose something first: click it, or press Tab."));
    }

    private void remove() {
        chosen("remove", thing -> {
            if (thing.kind() == Kind.RETURN) {
                session.say("The return stays: water that leaves over the weir must come from somewhere.");
                return now();
            }
            return Edits.without(now(), thing);
        });
        if (side.editable() && !session.message().startsWith("The return")) {
            session.select(Optional.empty());
        }
    }

    private void addCoral() {
        Scenario was = now();
        Vec3 seat = seat(was);
        Coral coral = new Coral(Edits.freeName("new coral", was.corals().stream().map(Coral::name).toList()),
                CoralGroup.LARGE_POLYP, seat, new Vec3(0, 0, 1), NEW_CORAL_M, Optional.empty());
        add(Edits.with(was, coral), new Thing(Kind.CORAL, was.corals().size()));
    }

    private void addRock() {
        Scenario was = now();
        Vec3 seat = seat(was);
        Rock rock = new Rock(Edits.freeName("new rock", was.rocks().stream().map(Rock::name).toList()),
                new Ellipsoid(seat, new Vec3(NEW_ROCK_M, NEW_ROCK_M, NEW_ROCK_M)));
        add(Edits.with(was, rock), new Thing(Kind.ROCK, was.rocks().size()));
    }

    private void add(Scenario more, Thing added) {
        if (!side.editable()) {
            session.say("A finished result stays as it is; open its scenario to change the layout.");
            return;
        }
        side.layout().change("add " + added, more);
        session.select(Optional.of(added));
    }

    /** The ground below the measuring point, or below the tank's middle: the sand or the top of a rock. */
    private Vec3 seat(Scenario scenario) {
        Vec3 inside = scenario.tank().insideM();
        Vec3 at = session.steps().place(session.pointM().orElse(new Vec3(inside.x() / 2, inside.y() * 0.2,
                scenario.tank().waterLevelM())));
        return Pick.ground(scenario, at);
    }
}
