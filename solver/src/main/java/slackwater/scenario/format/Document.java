package slackwater.scenario.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** A parsed file, from which declared tables are read. */
public final class Document {
    /** The parser goes one call deeper for each bracket; this many in a row are nobody's scenario. */
    private static final Pattern NESTED = Pattern.compile("(?:[\\[{]\\s*+){32}");

    private final TomlTable root;
    private final Faults faults;

    private Document(TomlTable root, Faults faults) {
        this.root = root;
        this.faults = faults;
    }

    /** Parses the text; where it is not TOML, tells each place and gives nothing, since the rest could not be trusted. */
    public static Optional<Document> parse(String text, Faults faults) {
        try {
            return NESTED.matcher(text).find() ? refuseNesting(faults) : parsed(Toml.parse(text), faults);
        } catch (StackOverflowError bottomless) {
            return refuseNesting(faults);
        }
    }

    private static Optional<Document> parsed(TomlParseResult result, Faults faults) {
        result.errors().forEach(error -> faults.add(error.position().line(), "",
                "not TOML at column " + error.position().column() + ": " + error.getMessage()));
        return result.hasErrors() ? Optional.empty() : Optional.of(new Document(result, faults));
    }

    private static Optional<Document> refuseNesting(Faults faults) {
        faults.add(0, "", "found brackets within brackets without end, must be a plain scenario file");
        return Optional.empty();
    }

    /** The keys above all tables; tells of keys and tables that are not in the format. */
    public Entry whole(Table format) {
        return TableReader.read(format, root, new Entry("", 1, faults));
    }

    /** True where the file has a key or table of that name, sound or not. */
    public boolean has(Table format) {
        return root.contains(List.of(format.name()));
    }

    /** Every table of one name, in the order of the file: none where it is not written, or not as a table. */
    public List<Entry> entries(Table format) {
        List<String> name = List.of(format.name());
        if (!has(format)) {
            if (format.required()) {
                faults.add(1, format.name(), "missing, give " + format.header() + ": " + format.about());
            }
            return List.of();
        }
        int line = root.inputPositionOf(name).line();
        Object found = root.get(name);
        if (found instanceof TomlTable table && !format.repeated()) {
            return List.of(TableReader.read(format, table, new Entry(format.name(), line, faults)));
        }
        if (found instanceof TomlArray array && format.repeated() && holdsTables(array)) {
            return entries(format, array, line);
        }
        faults.add(line, format.name(), "found " + found(found) + ", must be a table " + format.header());
        return List.of();
    }

    private List<Entry> entries(Table format, TomlArray array, int line) {
        if (array.size() > format.most()) {
            faults.add(line, format.name(), "found " + array.size() + " of them, must be at most " + format.most());
            return List.of();
        }
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            String path = format.name() + "[" + (i + 1) + "]";
            Entry entry = new Entry(path, array.inputPositionOf(i).line(), faults);
            entries.add(TableReader.read(format, array.getTable(i), entry));
        }
        return entries;
    }

    private static boolean holdsTables(TomlArray array) {
        return array.toList().stream().allMatch(TomlTable.class::isInstance);
    }

    private static String found(Object found) {
        if (found instanceof TomlArray array && !array.isEmpty() && holdsTables(array)) {
            return "a table in double brackets";
        }
        return found instanceof TomlTable ? "a table in single brackets" : Shown.value(found);
    }
}
