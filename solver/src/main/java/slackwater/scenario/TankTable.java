package slackwater.scenario;

import java.util.List;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Table;
import slackwater.scenario.format.TableWriter;
import slackwater.units.Dimension;

/** The table [tank]. */
final class TankTable {
    static final Key INSIDE = Key.numbers("inside", Dimension.LENGTH, 3, Limits.between(5, 500).typically(30, 200),
            "inner length, depth from front to back, and height, as [60, 40, 45]").needed();
    static final Key WATER_LEVEL = Key.number("water_level", Dimension.LENGTH, Limits.above(0, 500).typically(20, 70),
            "height of the water above the inside of the bottom").needed();
    static final Key SAND_DEPTH = Key.number("sand_depth", Dimension.LENGTH, Limits.between(0, 100).typically(2, 8),
            "depth of the sand; 0 is a bare bottom").standing("0");
    static final Key SAND_GRAIN = Key.number("sand_grain", Dimension.SMALL_LENGTH,
            Limits.above(0, 20).typically(0.2, 3), "size of the middling grain").standing("1");
    static final Table FORMAT = Table.one("tank", "The glass box, measured inside.",
            List.of(INSIDE, WATER_LEVEL, SAND_DEPTH, SAND_GRAIN)).needed();

    private TankTable() {
    }

    /** The tank, with faults told where its levels contradict each other. */
    static Placed<Tank> read(Entry entry) {
        Tank tank = new Tank(Places.vector(entry, INSIDE), entry.number(WATER_LEVEL), entry.number(SAND_DEPTH),
                entry.number(SAND_GRAIN));
        if (tank.waterLevelM() > tank.insideM().z()) {
            entry.fault(WATER_LEVEL, "found " + entry.shown(WATER_LEVEL) + ", must be at most the tank's height of "
                    + entry.inUnitOf(WATER_LEVEL, tank.insideM().z()));
        }
        if (tank.sandDepthM() >= tank.waterLevelM()) {
            entry.fault(SAND_DEPTH, "found " + entry.shown(SAND_DEPTH) + ", must be below the water level of "
                    + entry.inUnitOf(SAND_DEPTH, tank.waterLevelM()));
        }
        return new Placed<>(tank, entry);
    }

    static TableWriter write(Tank tank) {
        return new TableWriter(FORMAT)
                .put(INSIDE, Places.numbers(tank.insideM()))
                .put(WATER_LEVEL, tank.waterLevelM())
                .put(SAND_DEPTH, tank.sandDepthM())
                .put(SAND_GRAIN, tank.sandGrainM());
    }
}
