package slackwater.pump.catalogue;

import java.util.List;
import java.util.OptionalDouble;
import slackwater.geometry.Vec3;
import slackwater.scenario.Outlet;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Table;
import slackwater.units.Dimension;

/** The format of a catalogue file: one pump, all keys at the top. */
final class ModelTable {
    private static final Limits OPENING = Limits.between(2, 500);

    static final Key NAME = Key.text("name", 80, "what to call it").needed();
    static final Key ORIGIN = Key.text("origin", 200,
            "where the figures come from: data sheet, own measurement, invented").needed();
    static final Key FLOW = Key.number("flow", Dimension.FLOW, Limits.above(0, 100_000).typically(500, 20_000),
            "the maker's flow at full output").needed();
    static final Key DELIVERED = Key.number("delivered", Dimension.SHARE, Limits.between(20, 110).typically(70, 100),
            "share of the maker's flow to count on").standing("80");
    static final Key DOUBT = Key.number("flow_doubt", Dimension.SHARE, Limits.between(0, 60).typically(10, 30),
            "how far the flow counted on may still be off, 95 times in 100").standing("20");
    static final Key OUTLET = Key.number("outlet", Dimension.SMALL_LENGTH, OPENING.typically(15, 100),
            "diameter of a round outlet; this or outlet_slot must be there");
    static final Key SLOT = Key.numbers("outlet_slot", Dimension.SMALL_LENGTH, 2, OPENING.typically(5, 150),
            "width and height of a wide outlet, as [120, 12]");
    static final Key THRUST = Key.number("thrust_factor", Dimension.PLAIN, Limits.between(1, 2),
            "push against that of a plain nozzle: 1, up to 2 for an open propeller").standing("1");
    static final Key POWER = Key.number("power", Dimension.POWER, Limits.above(0, 1000).typically(3, 60),
            "electric power at full output, with its supply").needed();
    static final Key PRICE = Key.number("price", Dimension.PLAIN, Limits.between(0, 100_000),
            "what it costs, in your own money").needed();
    static final Key LEAST = Key.number("least_output", Dimension.SHARE, Limits.between(0, 100),
            "lowest output that can be set; 100 where it cannot be turned down").standing("100");
    static final Key QUIET = Key.number("quiet_output", Dimension.SHARE, Limits.between(0, 100),
            "output up to which you do not hear it").standing("100");
    static final Key SHALLOWEST = Key.number("least_depth", Dimension.LENGTH, Limits.between(0, 200).typically(3, 15),
            "water above the middle of its outlet, so that it draws no air").standing("5");
    static final Key DEEPEST = Key.number("greatest_depth", Dimension.LENGTH, Limits.between(1, 500),
            "how deep the middle of its outlet may hang").standing("200");
    static final Key BODY = Key.numbers("body", Dimension.SMALL_LENGTH, 3, Limits.between(5, 500).typically(30, 150),
            "length along the jet from the glass to the outlet, width and height, as [80, 70, 70]").needed();
    static final Table FORMAT = Table.whole("A pump that can be bought.", List.of(NAME, ORIGIN, FLOW, DELIVERED, DOUBT,
            OUTLET, SLOT, THRUST, POWER, PRICE, LEAST, QUIET, SHALLOWEST, DEEPEST, BODY), List.of());

    private ModelTable() {
    }

    /** Tells what is wrong between keys that are each right. */
    static void check(Entry entry) {
        if (entry.wrote(OUTLET) && entry.wrote(SLOT)) {
            entry.fault(SLOT, "found beside outlet, give only one of them");
        } else if (!entry.wrote(OUTLET) && !entry.wrote(SLOT)) {
            entry.missing(OUTLET);
        }
        if (entry.sound() && entry.number(DEEPEST) <= entry.number(SHALLOWEST)) {
            entry.fault(DEEPEST, "found " + entry.shown(DEEPEST) + ", must be above least_depth at "
                    + entry.inUnitOf(DEEPEST, entry.number(SHALLOWEST)));
        }
    }

    static PumpModel read(Entry entry) {
        Outlet outlet = entry.has(OUTLET) ? new Outlet.Round(entry.number(OUTLET))
                : new Outlet.Slot(entry.numbers(SLOT).get(0), entry.numbers(SLOT).get(1));
        List<Double> body = entry.numbers(BODY);
        return new PumpModel(entry.word(NAME), entry.word(ORIGIN), entry.number(FLOW), entry.number(DELIVERED),
                entry.number(DOUBT), outlet, entry.number(THRUST), OptionalDouble.of(entry.number(POWER)),
                OptionalDouble.of(entry.number(PRICE)), entry.number(LEAST), entry.number(QUIET),
                entry.number(SHALLOWEST), entry.number(DEEPEST), new Vec3(body.get(0), body.get(1), body.get(2)));
    }
}
