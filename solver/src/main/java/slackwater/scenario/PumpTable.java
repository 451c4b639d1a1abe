package slackwater.scenario;

import java.util.List;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Table;
import slackwater.scenario.format.TableWriter;
import slackwater.units.Dimension;

/** The tables [[pump]]. */
final class PumpTable {
    static final Words<Pattern.Kind> PATTERNS = new Words<>(Pattern.Kind.class);
    static final Key NAME = Key.text("name", 80, "what to call it; \"pump 1\" and so on where left out");
    static final Key FLOW = Key.number("flow", Dimension.FLOW, Limits.above(0, 100_000).typically(500, 20_000),
            "the maker's flow at full output").needed();
    static final Limits OPENING = Limits.between(2, 500);
    static final Key OUTLET = Key.number("outlet", Dimension.SMALL_LENGTH, OPENING.typically(15, 100),
            "diameter of a round outlet; this or outlet_slot must be there");
    static final Key SLOT = Key.numbers("outlet_slot", Dimension.SMALL_LENGTH, 2, OPENING.typically(5, 150),
            "width and height of a wide outlet, as [120, 12]");
    static final Key AT = Places.point("at",
            "middle of the outlet: from the left, from the front, from the bottom").needed();
    static final Key YAW = Key.number("yaw", Dimension.ANGLE, Limits.between(-360, 360),
            "aim seen from above: 0 to the right, 90 to the back, 180 to the left").standing("0");
    static final Key PITCH = Key.number("pitch", Dimension.ANGLE, Limits.between(-90, 90),
            "aim above the level; below 0 it points down").standing("0");
    static final Key ROLL = Key.number("roll", Dimension.ANGLE, Limits.between(-180, 180),
            "turn of a slot about its aim; 90 stands it on end").standing("0");
    static final Key OUTPUT = Key.number("output", Dimension.SHARE, Limits.between(0, 100),
            "set output; the flow goes in proportion").standing("100");
    static final Key FOULING = Key.number("fouling", Dimension.SHARE, Limits.between(0, 95).typically(0, 30),
            "share of the flow lost to dirt").standing("0");
    static final Key THRUST = Key.number("thrust_factor", Dimension.PLAIN, Limits.between(1, 2),
            "push against that of a plain nozzle: 1, up to 2 for an open propeller").standing("1");
    static final Key PATTERN = Key.word("pattern", PATTERNS.all(),
            "how its speed changes: full then low (pulse), low then full (alternate), a swing (sine)")
            .standing("steady");
    static final Key PERIOD = Key.number("period", Dimension.TIME, Limits.between(0.5, 3600).typically(1, 60),
            "time of one whole cycle; needed unless steady");
    static final Key LOW = Key.number("low", Dimension.SHARE, Limits.between(0, 100),
            "share of the set output in the low part of the cycle").standing("0");
    static final Key PHASE = Key.number("phase", Dimension.PLAIN, Limits.between(0, 1),
            "shift of the cycle, in whole cycles").standing("0");
    static final Table FORMAT = Table.many("pump", 64,
            "A circulation pump. At least one, unless there is a `[return]`; "
                    + "`pump = []` above all tables says that none is meant.",
            List.of(NAME, FLOW, OUTLET, SLOT, AT, YAW, PITCH, ROLL, OUTPUT, FOULING, THRUST,
                    PATTERN, PERIOD, LOW, PHASE));

    private PumpTable() {
    }

    /** Tells what is wrong between keys that are each right. */
    static void check(Entry entry) {
        if (entry.wrote(OUTLET) && entry.wrote(SLOT)) {
            entry.fault(SLOT, "found beside outlet, give only one of them");
        } else if (!entry.wrote(OUTLET) && !entry.wrote(SLOT)) {
            entry.missing(OUTLET);
        }
        if (entry.wrote(PATTERN) && !entry.has(PATTERN)) {
            return;
        }
        boolean steady = entry.word(PATTERN).equals("steady");
        if (!steady && !entry.wrote(PERIOD)) {
            entry.missing(PERIOD);
        }
        List.of(PERIOD, LOW, PHASE).stream().filter(key -> steady && entry.has(key)).forEach(key -> entry.fault(key,
                "found " + entry.shown(key) + ", but the pump is steady; choose a pattern or leave this out"));
    }

    static Pump read(Entry entry, String standardName) {
        Outlet outlet = entry.has(OUTLET) ? new Outlet.Round(entry.number(OUTLET))
                : new Outlet.Slot(entry.numbers(SLOT).get(0), entry.numbers(SLOT).get(1));
        return new Pump(entry.has(NAME) ? entry.word(NAME) : standardName, entry.number(FLOW), outlet,
                Places.vector(entry, AT), entry.number(YAW), entry.number(PITCH), entry.number(ROLL),
                entry.number(OUTPUT), entry.number(FOULING), entry.number(THRUST), pattern(entry));
    }

    private static Pattern pattern(Entry entry) {
        Pattern.Kind kind = PATTERNS.meant(entry.word(PATTERN));
        return kind == Pattern.Kind.STEADY ? Pattern.STEADY
                : new Pattern(kind, entry.number(PERIOD), entry.number(LOW), entry.number(PHASE));
    }

    static TableWriter write(Pump pump) {
        TableWriter writer = new TableWriter(FORMAT).put(NAME, pump.name()).put(FLOW, pump.flowM3PerS());
        if (pump.outlet() instanceof Outlet.Round round) {
            writer.put(OUTLET, round.diameterM());
        } else if (pump.outlet() instanceof Outlet.Slot slot) {
            writer.put(SLOT, List.of(slot.widthM(), slot.heightM()));
        }
        writer.put(AT, Places.numbers(pump.atM()))
                .put(YAW, pump.yawRad()).put(PITCH, pump.pitchRad()).put(ROLL, pump.rollRad())
                .put(OUTPUT, pump.outputFraction()).put(FOULING, pump.foulingFraction())
                .put(THRUST, pump.thrustFactor());
        Pattern pattern = pump.pattern();
        writer.put(PATTERN, PATTERNS.of(pattern.kind()));
        if (pattern.kind() != Pattern.Kind.STEADY) {
            writer.put(PERIOD, pattern.periodS())
                    .put(LOW, pattern.lowFraction()).put(PHASE, pattern.phaseFraction());
        }
        return writer;
    }
}
