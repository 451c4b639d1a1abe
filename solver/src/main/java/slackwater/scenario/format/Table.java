package slackwater.scenario.format;

import java.util.List;
import java.util.stream.Stream;

/**
 * A table of the scenario format.
 *
 * @param name as in {@code [name]} or {@code [[name]]}; empty for the whole file
 * @param most how many there may be; more than 1 for a {@code [[name]]}
 * @param required whether there must be one
 * @param about one line for people
 * @param keys in the order of writing
 * @param tables the tables in it
 */
public record Table(String name, int most, boolean required, String about, List<Key> keys, List<Table> tables) {
    public static Table whole(String about, List<Key> keys, List<Table> tables) {
        return new Table("", 1, true, about, keys, tables);
    }

    public static Table one(String name, String about, List<Key> keys) {
        return new Table(name, 1, false, about, keys, List.of());
    }

    public static Table many(String name, int most, String about, List<Key> keys) {
        return new Table(name, most, false, about, keys, List.of());
    }

    public Table needed() {
        return new Table(name, most, true, about, keys, tables);
    }

    public boolean repeated() {
        return most > 1;
    }

    /** The table as it is opened in a file. */
    public String header() {
        return repeated() ? "[[" + name + "]]" : "[" + name + "]";
    }

    /** Every name that may stand in it: its keys in all units, and its tables. */
    List<String> names() {
        return Stream.concat(keys.stream().flatMap(key -> key.names().stream()), tables.stream().map(Table::name))
                .toList();
    }
}
