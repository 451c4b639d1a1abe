package slackwater.scenario;

import java.util.List;
import java.util.Optional;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Table;
import slackwater.scenario.format.TableWriter;
import slackwater.units.Dimension;

/** The tables [[coral]]. */
final class CoralTable {
    static final String OWN_RANGE = "given in the scenario file";
    static final Words<CoralGroup> GROUPS = new Words<>(CoralGroup.class);
    static final Key NAME = Key.text("name", 80, "what to call it; \"coral 1\" and so on where left out");
    static final Key GROUP = Key.word("group", GROUPS.all(), "which water it needs").needed();
    static final Key AT = Places.point("at", "where it sits: from the left, from the front, from the bottom").needed();
    static final Key FACING = Places.direction("facing", "from its base out into the water").standing("up");
    static final Key SIZE = Key.number("size", Dimension.LENGTH, Limits.between(0.5, 100).typically(3, 30),
            "its diameter").standing("10");
    static final Key RANGE = Key.numbers("range", Dimension.SPEED, 2, Limits.between(0, 200).typically(2, 50),
            "your own slowest and fastest mean speed instead of the group's");
    static final Table FORMAT = Table.many("coral", 200, "A coral to judge.",
            List.of(NAME, GROUP, AT, FACING, SIZE, RANGE));

    private CoralTable() {
    }

    /** Tells what is wrong between keys that are each right. */
    static void check(Entry entry) {
        if (entry.has(RANGE) && entry.numbers(RANGE).get(0) >= entry.numbers(RANGE).get(1)) {
            entry.fault(RANGE, "found " + entry.shown(RANGE) + ", must be the slower speed and then the faster one");
        }
    }

    static Coral read(Entry entry, String standardName) {
        Optional<SpeedRange> range = entry.has(RANGE)
                ? Optional.of(new SpeedRange(entry.numbers(RANGE).get(0), entry.numbers(RANGE).get(1), OWN_RANGE))
                : Optional.empty();
        return new Coral(entry.has(NAME) ? entry.word(NAME) : standardName, GROUPS.meant(entry.word(GROUP)),
                Places.vector(entry, AT), Places.unitVector(entry, FACING), entry.number(SIZE), range);
    }

    static TableWriter write(Coral coral) {
        TableWriter writer = new TableWriter(FORMAT)
                .put(NAME, coral.name())
                .put(GROUP, GROUPS.of(coral.group()))
                .put(AT, Places.numbers(coral.atM()));
        Places.write(writer, FACING, coral.facing());
        writer.put(SIZE, coral.sizeM());
        coral.range().ifPresent(range -> writer.put(RANGE, List.of(range.lowMPerS(), range.highMPerS())));
        return writer;
    }
}
