package slackwater.search;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Wall;
import slackwater.scenario.Words;
import slackwater.scenario.format.Document;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Table;
import slackwater.search.Wishes.Clearances;
import slackwater.units.Dimension;

/** The format of a file of wishes. */
final class WishesTables {
    private static final Words<Wall> PANES = new Words<>(Wall.class);
    private static final Limits CLEAR = Limits.between(0, 100).typically(2, 20);
    private static final Limits ANYWHERE = Limits.between(-1000, 1000);

    private static final Key CABLE = Key.word("cable_pane", PANES.all(), "the pane over whose rim all cables leave");
    private static final Key REACH = Key.number("cable_reach", Dimension.LENGTH, Limits.above(0, 1000),
            "most glass between a pump and that pane, along the panes and up to the rim").standing("150");
    private static final Key GLASS = Key.number("clear_of_glass", Dimension.LENGTH, CLEAR,
            "between a pump and the panes that it does not hang on").standing("3");
    private static final Key CORAL = Key.number("clear_of_coral", Dimension.LENGTH, CLEAR,
            "between a pump and a coral").standing("10");
    private static final Key ROCK = Key.number("clear_of_rock", Dimension.LENGTH, CLEAR,
            "between a pump with its intake and rock").standing("3");
    private static final Key SAND = Key.number("clear_of_sand", Dimension.LENGTH, CLEAR,
            "between a pump and the sand").standing("5");
    private static final Key SURFACE = Key.number("clear_of_surface", Dimension.LENGTH, CLEAR,
            "water above the top of an outlet, so that no air is drawn").standing("3");
    private static final Key JET = Key.number("jet_to_coral", Dimension.LENGTH,
            Limits.between(0, 200).typically(15, 40), "a jet may point straight at a coral only from further away")
            .standing("20");
    private static final Key TARIFF = Key.number("tariff_per_kwh", Dimension.PLAIN, Limits.between(0, 1000),
            "price of a kilowatt hour in your own money").standing("0.30");
    private static final Key HOURS = Key.number("hours_per_day", Dimension.PLAIN, Limits.above(0, 24),
            "hours a day at the set output").standing("24");
    private static final Table PLACING = Table.one("placing", "Distances to keep, cables and tariff.",
            List.of(CABLE, REACH, GLASS, CORAL, ROCK, SAND, SURFACE, JET, TARIFF, HOURS));

    private static final Key PANE = Key.word("pane", PANES.all(), "a pane to look through: no pump on it").needed();
    private static final Table SHOW = Table.many("show", 4,
            "A pane with no pump on it; the front where none is named.", List.of(PANE));

    private static final Key MIN = Key.numbers("min", Dimension.LENGTH, 3, ANYWHERE, "its left, front, lower corner")
            .needed();
    private static final Key MAX = Key.numbers("max", Dimension.LENGTH, 3, ANYWHERE, "its right, back, upper corner")
            .needed();
    private static final Table KEEP_OUT = Table.many("keep_out", 50, "A space with no pump in it.",
            List.of(MIN, MAX));

    static final Table WHOLE = Table.whole("What the keeper allows and pays.", List.of(),
            List.of(PLACING, SHOW, KEEP_OUT));

    private WishesTables() {
    }

    /** The wishes of a file; empty where something is wrong with it, which is told. */
    static Optional<Wishes> read(Document document) {
        boolean sound = document.whole(WHOLE).sound();
        List<Entry> placing = document.entries(PLACING);
        List<Entry> shows = document.entries(SHOW);
        List<Entry> spaces = document.entries(KEEP_OUT);
        spaces.stream().filter(Entry::sound).forEach(WishesTables::checkSpace);
        if (!sound || !allSound(placing) || !allSound(shows) || !allSound(spaces)) {
            return Optional.empty();
        }
        List<Wall> shown = shows.isEmpty() ? List.of(Wall.FRONT)
                : shows.stream().map(entry -> PANES.meant(entry.word(PANE))).toList();
        List<Wall> panes = Arrays.stream(Wall.values()).filter(pane -> !shown.contains(pane)).toList();
        if (panes.isEmpty()) {
            shows.get(0).fault(PANE, "found every pane to look through, must leave one for the pumps");
            return Optional.empty();
        }
        Wishes open = new Wishes(panes, spaces.stream().map(WishesTables::space).toList(), Optional.empty(),
                Wishes.NONE.cableReachM(), Clearances.USUAL, Wishes.NONE.tariffPerKWh(), Wishes.NONE.hoursPerDay());
        return Optional.of(placing.stream().findFirst().map(entry -> placing(open, entry)).orElse(open));
    }

    private static Wishes placing(Wishes open, Entry entry) {
        Optional<Wall> cables = entry.has(CABLE) ? Optional.of(PANES.meant(entry.word(CABLE))) : Optional.empty();
        Clearances clearances = new Clearances(entry.number(GLASS), entry.number(CORAL), entry.number(ROCK),
                entry.number(SAND), entry.number(SURFACE), entry.number(JET));
        return new Wishes(open.panes(), open.keepOut(), cables, entry.number(REACH), clearances,
                entry.number(TARIFF), entry.number(HOURS));
    }

    private static boolean allSound(List<Entry> entries) {
        return entries.stream().allMatch(Entry::sound);
    }

    private static void checkSpace(Entry entry) {
        List<Double> min = entry.numbers(MIN);
        List<Double> max = entry.numbers(MAX);
        if (min.get(0) >= max.get(0) || min.get(1) >= max.get(1) || min.get(2) >= max.get(2)) {
            entry.fault(MAX, "found " + entry.shown(MAX) + ", must be above min " + entry.shown(MIN)
                    + " in every direction");
        }
    }

    private static Bounds space(Entry entry) {
        return new Bounds(point(entry.numbers(MIN)), point(entry.numbers(MAX)));
    }

    private static Vec3 point(List<Double> numbers) {
        return new Vec3(numbers.get(0), numbers.get(1), numbers.get(2));
    }
}
