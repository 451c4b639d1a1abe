package slackwater.scenario;

import java.util.List;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Table;
import slackwater.scenario.format.TableWriter;
import slackwater.units.Dimension;

/** The table [overflow]. */
final class OverflowTable {
    static final Words<Wall> WALLS = new Words<>(Wall.class);
    static final Key WALL = Key.word("wall", WALLS.all(), "the pane it is in").needed();
    static final Key FROM = Key.number("from", Dimension.LENGTH, Limits.between(0, 500),
            "where it begins, from the left end of a front or back pane, from the front end of a side pane").needed();
    static final Key TO = Key.number("to", Dimension.LENGTH, Limits.between(0, 500),
            "where it ends, measured from the same end").needed();
    static final Table FORMAT = Table.one("overflow",
            "The weir at the water line through which the same water leaves. Goes with `[return]`.",
            List.of(WALL, FROM, TO));

    private OverflowTable() {
    }

    static Overflow read(Entry entry) {
        return new Overflow(WALLS.meant(entry.word(WALL)), entry.number(FROM), entry.number(TO));
    }

    /** Tells where the weir does not fit its pane. */
    static void check(Placed<Overflow> placed, Tank tank) {
        Entry entry = placed.entry();
        Overflow weir = placed.thing();
        boolean side = weir.wall() == Wall.LEFT || weir.wall() == Wall.RIGHT;
        double paneM = side ? tank.insideM().y() : tank.insideM().x();
        if (weir.toM() <= weir.fromM()) {
            entry.fault(TO, "found " + entry.shown(TO) + ", must be above from at " + entry.inUnitOf(TO, weir.fromM())
                    + "; swap them or make the weir longer");
        }
        if (Math.max(weir.fromM(), weir.toM()) > paneM) {
            entry.fault(weir.toM() > paneM ? TO : FROM, "found " + entry.shown(weir.toM() > paneM ? TO : FROM)
                    + ", must be at most the pane's length of " + entry.inUnitOf(TO, paneM));
        }
    }

    static TableWriter write(Overflow weir) {
        return new TableWriter(FORMAT)
                .put(WALL, WALLS.of(weir.wall()))
                .put(FROM, weir.fromM())
                .put(TO, weir.toM());
    }
}
