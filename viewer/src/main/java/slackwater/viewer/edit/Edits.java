package slackwater.viewer.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Return;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.units.Unit;

/** Changes to a layout; each gives a new one. Places are kept within the tank, but nothing else is checked here. */
public final class Edits {
    private static final double STRAIGHT_UP_RAD = Math.PI / 2;

    private Edits() {
    }

    /** A thing at another place, metres: see {@link Thing#atM}. */
    public static Scenario moved(Scenario scenario, Thing thing, Vec3 toM) {
        return switch (thing.kind()) {
            case PUMP -> pump(scenario, thing.index(), pump -> at(pump, Room.forOutlet(scenario).nearest(toM)));
            case RETURN -> line(scenario, line -> new Return(line.flowM3PerS(), line.nozzleM(),
                    Room.forOutlet(scenario).nearest(toM), line.yawRad(), line.pitchRad()));
            case CORAL -> coral(scenario, thing.index(), coral -> new Coral(coral.name(), coral.group(),
                    Room.forCoral(scenario).nearest(toM), coral.facing(), coral.sizeM(), coral.range()));
            case ROCK -> rock(scenario, thing.index(), rock -> new Rock(rock.name(), Shapes.moved(rock.solid(),
                    toM.minus(thing.atM(scenario)))));
        };
    }

    /**
     * A pump or the return with another aim; other things stay.
     *
     * @param yawRad about the vertical, taken to 0..2 pi
     * @param pitchRad above the level, kept within straight down and straight up
     */
    public static Scenario aimed(Scenario scenario, Thing thing, double yawRad, double pitchRad) {
        double turns = yawRad / (2 * Math.PI);
        double yaw = yawRad >= 0 && turns < 1 ? yawRad : (turns - Math.floor(turns)) * 2 * Math.PI;
        double pitch = Math.max(-STRAIGHT_UP_RAD, Math.min(STRAIGHT_UP_RAD, pitchRad));
        return switch (thing.kind()) {
            case PUMP -> pump(scenario, thing.index(), pump -> new Pump(pump.name(), pump.flowM3PerS(), pump.outlet(),
                    pump.atM(), yaw, pitch, pump.rollRad(), pump.outputFraction(), pump.foulingFraction(),
                    pump.thrustFactor(), pump.pattern()));
            case RETURN -> line(scenario, line -> new Return(line.flowM3PerS(), line.nozzleM(), line.atM(), yaw,
                    pitch));
            default -> scenario;
        };
    }

    /** A pump at another output, 0 (off) to 1. */
    public static Scenario output(Scenario scenario, int pump, double fraction) {
        double set = Math.max(0, Math.min(1, fraction));
        return pump(scenario, pump, was -> new Pump(was.name(), was.flowM3PerS(), was.outlet(), was.atM(),
                was.yawRad(), was.pitchRad(), was.rollRad(), set, was.foulingFraction(), was.thrustFactor(),
                was.pattern()));
    }

    /** A pump that changes with time in another way. */
    public static Scenario pattern(Scenario scenario, int pump, Pattern pattern) {
        return pump(scenario, pump, was -> new Pump(was.name(), was.flowM3PerS(), was.outlet(), was.atM(),
                was.yawRad(), was.pitchRad(), was.rollRad(), was.outputFraction(), was.foulingFraction(),
                was.thrustFactor(), pattern));
    }

    /** The next kind of pattern, keeping the period and the low part where there are some. */
    public static Pattern nextPattern(Pattern pattern) {
        Pattern.Kind[] kinds = Pattern.Kind.values();
        Pattern.Kind next = kinds[(pattern.kind().ordinal() + 1) % kinds.length];
        if (next == Pattern.Kind.STEADY) {
            return Pattern.STEADY;
        }
        boolean steady = pattern.kind() == Pattern.Kind.STEADY;
        return new Pattern(next, steady ? 10 : pattern.periodS(), steady ? 0.3 : pattern.lowFraction(),
                pattern.phaseFraction());
    }

    /** A pump whose slot is turned about its aim, radians; taken to -pi..pi. */
    public static Scenario rolled(Scenario scenario, int pump, double rollRad) {
        double roll = Math.abs(rollRad) <= Math.PI ? rollRad : Math.IEEEremainder(rollRad, 2 * Math.PI);
        return pump(scenario, pump, was -> new Pump(was.name(), was.flowM3PerS(), was.outlet(), was.atM(),
                was.yawRad(), was.pitchRad(), roll, was.outputFraction(), was.foulingFraction(), was.thrustFactor(),
                was.pattern()));
    }

    /** A coral of the next group, or a rock of the next simple shape in the same box; a mesh stays what it is. */
    public static Scenario nextKind(Scenario scenario, Thing thing) {
        return switch (thing.kind()) {
            case CORAL -> coral(scenario, thing.index(), coral -> new Coral(coral.name(),
                    CoralGroup.values()[(coral.group().ordinal() + 1) % CoralGroup.values().length], coral.atM(),
                    coral.facing(), coral.sizeM(), coral.range()));
            case ROCK -> rock(scenario, thing.index(), rock -> new Rock(rock.name(), Shapes.next(rock.solid())));
            default -> scenario;
        };
    }

    /** With a coral more, the last one. */
    public static Scenario with(Scenario scenario, Coral coral) {
        List<Coral> corals = new ArrayList<>(scenario.corals());
        corals.add(coral);
        return with(scenario, scenario.rocks(), scenario.pumps(), scenario.returnLine(), corals);
    }

    /** With a rock more, the last one. */
    public static Scenario with(Scenario scenario, Rock rock) {
        List<Rock> rocks = new ArrayList<>(scenario.rocks());
        rocks.add(rock);
        return with(scenario, rocks, scenario.pumps(), scenario.returnLine(), scenario.corals());
    }

    /** Without a thing; the return stays, since water that leaves over a weir must come from somewhere. */
    public static Scenario without(Scenario scenario, Thing thing) {
        return switch (thing.kind()) {
            case PUMP -> with(scenario, scenario.rocks(), less(scenario.pumps(), thing.index()),
                    scenario.returnLine(), scenario.corals());
            case RETURN -> scenario;
            case CORAL -> with(scenario, scenario.rocks(), scenario.pumps(), scenario.returnLine(),
                    less(scenario.corals(), thing.index()));
            case ROCK -> with(scenario, less(scenario.rocks(), thing.index()), scenario.pumps(),
                    scenario.returnLine(), scenario.corals());
        };
    }

    /** Larger or smaller by a factor: a coral or a rock that is no mesh; other things stay. */
    public static Scenario resized(Scenario scenario, Thing thing, double factor) {
        return switch (thing.kind()) {
            case CORAL -> coral(scenario, thing.index(), coral -> new Coral(coral.name(), coral.group(), coral.atM(),
                    coral.facing(), Unit.MM.toSi(Math.rint(Unit.MM.fromSi(Math.max(0.005, Math.min(1,
                    coral.sizeM() * factor))))), coral.range()));
            case ROCK -> rock(scenario, thing.index(), rock -> new Rock(rock.name(),
                    Shapes.resized(rock.solid(), factor)));
            default -> scenario;
        };
    }

    /** A name that nothing of its kind has yet: "new coral", "new coral 2". */
    public static String freeName(String wish, List<String> taken) {
        String name = wish;
        for (int n = 2; taken.contains(name); n++) {
            name = wish + " " + n;
        }
        return name;
    }

    private static Pump at(Pump pump, Vec3 atM) {
        return new Pump(pump.name(), pump.flowM3PerS(), pump.outlet(), atM, pump.yawRad(), pump.pitchRad(),
                pump.rollRad(), pump.outputFraction(), pump.foulingFraction(), pump.thrustFactor(), pump.pattern());
    }

    private static Scenario pump(Scenario scenario, int index, UnaryOperator<Pump> change) {
        return with(scenario, scenario.rocks(), changed(scenario.pumps(), index, change), scenario.returnLine(),
                scenario.corals());
    }

    private static Scenario line(Scenario scenario, UnaryOperator<Return> change) {
        return with(scenario, scenario.rocks(), scenario.pumps(), scenario.returnLine().map(change),
                scenario.corals());
    }

    private static Scenario coral(Scenario scenario, int index, UnaryOperator<Coral> change) {
        return with(scenario, scenario.rocks(), scenario.pumps(), scenario.returnLine(),
                changed(scenario.corals(), index, change));
    }

    private static Scenario rock(Scenario scenario, int index, UnaryOperator<Rock> change) {
        return with(scenario, changed(scenario.rocks(), index, change), scenario.pumps(), scenario.returnLine(),
                scenario.corals());
    }

    private static <T> List<T> changed(List<T> things, int index, UnaryOperator<T> change) {
        List<T> changed = new ArrayList<>(things);
        changed.set(index, change.apply(things.get(index)));
        return changed;
    }

    private static <T> List<T> less(List<T> things, int index) {
        List<T> less = new ArrayList<>(things);
        less.remove(index);
        return less;
    }

    private static Scenario with(Scenario scenario, List<Rock> rocks, List<Pump> pumps, Optional<Return> line,
                                 List<Coral> corals) {
        return new Scenario(scenario.name(), scenario.tank(), List.copyOf(rocks), List.copyOf(pumps), line,
                scenario.overflow(), List.copyOf(corals));
    }
}
