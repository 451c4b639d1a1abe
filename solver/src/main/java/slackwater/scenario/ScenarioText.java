package slackwater.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import slackwater.scenario.format.Fault;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.SourceEdit;
import slackwater.scenario.format.Table;
import slackwater.scenario.format.TableWriter;

/**
 * Writes a changed layout into the text it was read from. Only values that changed are touched: comments, order, blank
 * lines and the units that the person chose stay. Things are recognised by their names; one that only got a new name,
 * by all the rest of it.
 */
final class ScenarioText {
    /** A kind of thing of which there may be several, as the format knows it. */
    private record Kind<T>(Table format, Key name, Function<T, String> named, Function<T, TableWriter> written) {
        List<String> names(List<T> things) {
            return things.stream().map(named).toList();
        }
    }

    private static final Kind<Rock> ROCKS = new Kind<>(RockTable.FORMAT, RockTable.NAME, Rock::name, RockTable::write);
    private static final Kind<Pump> PUMPS = new Kind<>(PumpTable.FORMAT, PumpTable.NAME, Pump::name, PumpTable::write);
    private static final Kind<Coral> CORALS = new Kind<>(CoralTable.FORMAT, CoralTable.NAME, Coral::name,
            CoralTable::write);

    private final SourceEdit edit;
    private final String file;

    private ScenarioText(String text, String file) {
        this.edit = new SourceEdit(text);
        this.file = file;
    }

    /**
     * The text with the wanted rocks, pumps, return and corals in the place of those that were read from it.
     *
     * @param file what faults are to call it
     * @throws ScenarioFaults where something that changed is written in a way that cannot be changed in place
     */
    static String changed(String text, String file, Scenario read, Scenario wanted) throws ScenarioFaults {
        ScenarioText source = new ScenarioText(text, file);
        source.change(ROCKS, read.rocks(), wanted.rocks());
        source.change(PUMPS, read.pumps(), wanted.pumps());
        source.change(CORALS, read.corals(), wanted.corals());
        source.change(read.returnLine(), wanted.returnLine());
        boolean still = wanted.pumps().isEmpty() && wanted.returnLine().isEmpty();
        if (still || !wanted.pumps().isEmpty()) {
            source.edit.none(PumpTable.FORMAT, still);
        }
        return source.edit.text();
    }

    /** True where two scenarios say the same, but for what writing numbers rounds off. */
    static boolean same(Scenario one, Scenario other) {
        List<TableWriter> left = tables(one);
        List<TableWriter> right = tables(other);
        boolean same = one.name().equals(other.name()) && left.size() == right.size();
        for (int n = 0; same && n < left.size(); n++) {
            same = left.get(n).same(right.get(n));
        }
        return same;
    }

    private static List<TableWriter> tables(Scenario scenario) {
        return Stream.of(Stream.of(TankTable.write(scenario.tank())), scenario.rocks().stream().map(RockTable::write),
                scenario.pumps().stream().map(PumpTable::write), scenario.returnLine().stream().map(ReturnTable::write),
                scenario.overflow().stream().map(OverflowTable::write),
                scenario.corals().stream().map(CoralTable::write)).flatMap(tables -> tables).toList();
    }

    private <T> void change(Kind<T> kind, List<T> read, List<T> wanted) throws ScenarioFaults {
        if (read.equals(wanted)) {
            return;
        }
        requireTables(kind.format(), read.size());
        List<Integer> places = places(kind, read, wanted);
        for (int n = 0; n < read.size(); n++) {
            if (!places.contains(n)) {
                edit.remove(kind.format(), n);
            }
        }
        int behind = -1;
        for (int n = 0; n < wanted.size(); n++) {
            int place = places.get(n);
            TableWriter table = kind.written().apply(wanted.get(n));
            if (place < 0) {
                edit.add(ScenarioFormat.WHOLE, behind, table);
                continue;
            }
            behind = place;
            edit.change(place, kind.written().apply(read.get(place)), table);
            keepName(kind, place, n, kind.named().apply(read.get(place)), kind.named().apply(wanted.get(n)));
        }
    }

    /** Writes out a name that the file leaves to the count, where the count has changed. */
    private <T> void keepName(Kind<T> kind, int place, int now, String read, String wanted) {
        boolean counted = !edit.has(kind.format(), place, kind.name());
        if (counted && read.equals(wanted) && !wanted.equals(kind.format().name() + " " + (now + 1))) {
            edit.name(kind.format(), place, kind.name(), wanted);
        }
    }

    /** For each wanted thing its place among those read, -1 for a new one. */
    private static <T> List<Integer> places(Kind<T> kind, List<T> read, List<T> wanted) {
        List<String> names = kind.names(read);
        List<String> kept = kind.names(wanted);
        List<Integer> places = new ArrayList<>();
        for (int n = 0; n < wanted.size(); n++) {
            int place = names.indexOf(kept.get(n));
            boolean sameCount = place < 0 && n < read.size() && read.size() == wanted.size();
            places.add(sameCount && !kept.contains(names.get(n)) ? Integer.valueOf(n) : Integer.valueOf(place));
        }
        return places;
    }

    private void change(Optional<Return> read, Optional<Return> wanted) throws ScenarioFaults {
        if (read.equals(wanted) || read.isEmpty() || wanted.isEmpty()) {
            return;
        }
        requireTables(ReturnTable.FORMAT, 1);
        edit.change(0, ReturnTable.write(read.get()), ReturnTable.write(wanted.get()));
    }

    private void requireTables(Table format, int count) throws ScenarioFaults {
        if (edit.count(format) != count) {
            throw new ScenarioFaults(List.of(new Fault(file, 0, format.name(), "is written in braces or with dots,"
                    + " which cannot be changed in place; write it as a table " + format.header() + ", or save to a new"
                    + " file")));
        }
    }
}
