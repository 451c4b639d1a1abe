package slackwater.scenario.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import slackwater.units.Unit;

/** Reads the keys of one table by their declaration. */
final class TableReader {
    private final Table format;
    private final TomlTable table;
    private final Entry entry;

    private TableReader(Table format, TomlTable table, Entry entry) {
        this.format = format;
        this.table = table;
        this.entry = entry;
    }

    /** Reads what is written into the entry and tells what is wrong with it, missing keys included. */
    static Entry read(Table format, TomlTable table, Entry entry) {
        TableReader reader = new TableReader(format, table, entry);
        List<String> tables = format.tables().stream().map(Table::name).toList();
        List<String> known = format.names();
        table.keySet().stream().filter(name -> known.contains(name) && !tables.contains(name)).forEach(reader::readKey);
        table.keySet().stream().filter(name -> !known.contains(name)).forEach(reader::tellUnknown);
        format.keys().stream()
                .filter(key -> key.required() && !entry.wrote(key))
                .forEach(entry::missing);
        return entry;
    }

    private void readKey(String name) {
        int line = table.inputPositionOf(List.of(name)).line();
        Key key = key(name).orElseThrow();
        Optional<Entry.Written> earlier = entry.written(key);
        if (earlier.isPresent()) {
            entry.faultAt(line, name, "found beside " + earlier.get().name() + ", give only one of them");
            return;
        }
        entry.wrote(key, new Entry.Written(name, line));
        Object found = table.get(List.of(name));
        Optional<Value> value = value(key, name, line, found);
        value.ifPresent(read -> entry.put(key, read));
    }

    /** Tells of a key that is not in the format; the one it was meant for is then not told to be missing. */
    private void tellUnknown(String name) {
        int line = table.inputPositionOf(List.of(name)).line();
        Optional<String> nearest = Nearest.to(name, format.names());
        Optional<Key> meant = nearest.flatMap(this::key);
        entry.faultAt(line, Shown.bare(name), meant.map(key -> String.join(" or ", key.names())).or(() -> nearest)
                .map(names -> "unknown key, did you mean " + names + "?")
                .orElse("unknown key, known here are " + String.join(", ", format.names())));
        meant.filter(key -> !entry.wrote(key)).ifPresent(key -> entry.wrote(key, new Entry.Written(name, line)));
    }

    private Optional<Key> key(String name) {
        return format.keys().stream().filter(key -> key.names().contains(name)).findFirst();
    }

    private Optional<Value> value(Key key, String name, int line, Object found) {
        if (key.kind() instanceof Kind.Text text) {
            return text(text, name, line, found);
        }
        if (key.kind() instanceof Kind.Word word) {
            return word(word.words(), "", name, line, found);
        }
        if (key.kind() instanceof Kind.Numbers numbers) {
            return numbers(key, numbers, name, line, found);
        }
        List<String> words = ((Kind.WordOrDirection) key.kind()).words();
        return found instanceof TomlArray array ? direction(array, name, line)
                : word(words, " or a direction such as [0, -1, 1]", name, line, found);
    }

    private Optional<Value> text(Kind.Text text, String name, int line, Object found) {
        if (found instanceof String written && !written.isBlank() && written.length() <= text.longest()
                && written.codePoints().noneMatch(Character::isISOControl)) {
            return Optional.of(new Value(written, List.of()));
        }
        return refuse(name, line, found, "must be text in quotes, on one line, of 1 to "
                + text.longest() + " characters");
    }

    private Optional<Value> word(List<String> words, String otherwise, String name, int line, Object found) {
        if (found instanceof String written && words.contains(written)) {
            return Optional.of(new Value(written, List.of()));
        }
        String must = "must be \"" + String.join("\", \"", words) + "\"" + otherwise;
        Optional<String> meant = found instanceof String written ? Nearest.to(written, words) : Optional.empty();
        return refuse(name, line, found, must + meant.map(word -> "; did you mean \"" + word + "\"?").orElse(""));
    }

    private Optional<Value> direction(TomlArray found, String name, int line) {
        Optional<List<Double>> written = doubles(found);
        boolean points = written.isPresent() && written.get().size() == 3
                && written.get().stream().allMatch(Double::isFinite)
                && written.get().stream().anyMatch(part -> part != 0);
        return points ? Optional.of(new Value("", written.get()))
                : refuse(name, line, found, "must be three numbers, not all 0, such as [0, -1, 1]");
    }

    private Optional<Value> numbers(Key key, Kind.Numbers kind, String name, int line, Object found) {
        Optional<List<Double>> written = kind.count() == 1 ? single(found)
                : found instanceof TomlArray array ? doubles(array) : Optional.empty();
        if (written.isEmpty() || written.get().size() != kind.count()) {
            return refuse(name, line, found, kind.count() == 1 ? "must be a number without quotes"
                    : "must be " + kind.count() + " numbers in brackets");
        }
        Unit metric = kind.dimension().metric();
        Unit used = key.units().get(key.names().indexOf(name));
        for (double number : written.get()) {
            if (!Double.isFinite(number)) {
                return refuse(name, line, found, "must be a finite number");
            }
            double inMetric = used == metric ? number : metric.fromSi(used.toSi(number));
            if (!kind.limits().allow(inMetric)) {
                return refuse(name, line, found, kind.limits().brokenBy(inMetric, metric, used));
            }
        }
        return Optional.of(new Value("", written.get().stream().map(used::toSi).toList()));
    }

    private Optional<Value> refuse(String name, int line, Object found, String must) {
        entry.faultAt(line, name, "found " + Shown.value(found) + ", " + must);
        return Optional.empty();
    }

    private static Optional<List<Double>> single(Object found) {
        return found instanceof Number number ? Optional.of(List.of(number.doubleValue())) : Optional.empty();
    }

    private static Optional<List<Double>> doubles(TomlArray array) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            Optional<List<Double>> one = single(array.get(i));
            if (one.isEmpty()) {
                return Optional.empty();
            }
            all.addAll(one.get());
        }
        return Optional.of(all);
    }
}
