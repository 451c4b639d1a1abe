package slackwater.scenario;

import java.util.List;
import java.util.OptionalDouble;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Table;
import slackwater.scenario.format.TableWriter;
import slackwater.units.Dimension;

/** The tables [[material]]. */
final class MaterialTable {
    private static final Limits STRESS = Limits.above(0, 100).typically(0.02, 2);
    static final Key NAME = Key.text("name", 80, "what to call it; sand, food, pellets, waste or floc takes the place"
            + " of the usual one").needed();
    static final Key SIZE = Key.number("size", Dimension.SMALL_LENGTH, Limits.above(0, 20).typically(0.1, 5),
            "size of the middling grain").needed();
    static final Key DENSITY = Key.number("density", Dimension.DENSITY,
            Limits.between(1024, 8000).typically(1030, 2850), "of one grain, pores and all; must sink in seawater")
            .standing("2830");
    static final Key SETTLING = Key.number("settling", Dimension.SPEED, Limits.above(0, 100).typically(0.1, 15),
            "how fast it sinks in still water; from size and density where left out");
    static final Key SMOOTH = Key.number("lifts_from_smooth", Dimension.STRESS, STRESS,
            "shear stress that lifts it from glass or smooth flesh; half of that on sand where left out");
    static final Key SAND = Key.number("lifts_from_sand", Dimension.STRESS, STRESS,
            "shear stress that lifts it from sand; from size and density where left out");
    static final Key ROCK = Key.number("lifts_from_rock", Dimension.STRESS, STRESS,
            "shear stress that lifts it from broken rock; 2.7 times that on sand where left out");
    static final Key CAUGHT = Key.number("caught_by_pumps", Dimension.SHARE, Limits.between(0, 100),
            "share that stays in a circulation pump that draws it in, for its grille or sponge").standing("0");
    static final Table FORMAT = Table.many("material", 20, "Something that sinks: your own sand or food.",
            List.of(NAME, SIZE, DENSITY, SETTLING, SMOOTH, SAND, ROCK, CAUGHT));

    private MaterialTable() {
    }

    static Material read(Entry entry) {
        return new Material(entry.word(NAME), entry.number(SIZE), entry.number(DENSITY), perhaps(entry, SETTLING),
                perhaps(entry, SMOOTH), perhaps(entry, SAND), perhaps(entry, ROCK), entry.number(CAUGHT));
    }

    private static OptionalDouble perhaps(Entry entry, Key key) {
        return entry.has(key) ? OptionalDouble.of(entry.number(key)) : OptionalDouble.empty();
    }

    static String write(Material material) {
        TableWriter writer = new TableWriter(FORMAT)
                .put(NAME, material.name())
                .put(SIZE, material.sizeM())
                .put(DENSITY, material.densityKgPerM3());
        material.settlingMPerS().ifPresent(speed -> writer.put(SETTLING, speed));
        material.smoothPa().ifPresent(stress -> writer.put(SMOOTH, stress));
        material.sandPa().ifPresent(stress -> writer.put(SAND, stress));
        material.rockPa().ifPresent(stress -> writer.put(ROCK, stress));
        return writer.put(CAUGHT, material.caughtFraction()).text();
    }
}
