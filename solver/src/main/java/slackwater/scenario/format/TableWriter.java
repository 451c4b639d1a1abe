package slackwater.scenario.format;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tomlj.Toml;
import slackwater.units.Unit;

/** Writes one table by its declaration. Standard values are left out. */
public final class TableWriter {
    /** Two values are the same where they differ by no more than this, in SI units: what writing may round off. */
    private static final double ROUNDING = 1e-8;

    private final Table format;
    private final Map<Key, Value> values = new LinkedHashMap<>();

    public TableWriter(Table format) {
        this.format = format;
    }

    /** Writes a word or text. */
    public TableWriter put(Key key, String word) {
        values.put(key, new Value(word, List.of()));
        return this;
    }

    /**
     * Writes numbers given in SI units, in that of the key's units which holds them exactly in the fewest digits: a
     * tank measured in inches stays in inches. Where none does (the numbers were computed), in the metric one, off in
     * the last place.
     */
    public TableWriter put(Key key, List<Double> si) {
        values.put(key, new Value("", List.copyOf(si)));
        return this;
    }

    public TableWriter put(Key key, double si) {
        return put(key, List.of(si));
    }

    public String text() {
        StringBuilder text = new StringBuilder(format.name().isEmpty() ? "" : "\n" + format.header() + "\n");
        values.forEach((key, value) -> {
            if (!standard(key)) {
                text.append(line(key)).append('\n');
            }
        });
        return text.length() == 0 ? "\n" : text.toString();
    }

    /** True where the two write the same keys with the same values, but for what writing numbers rounds off. */
    public boolean same(TableWriter other) {
        return values.keySet().equals(other.values.keySet()) && values.keySet().stream().noneMatch(
                key -> differs(values.get(key), other.values.get(key)));
    }

    Table format() {
        return format;
    }

    Map<Key, Value> values() {
        return values;
    }

    /** Whether a key holds its standard value and so need not be written. */
    boolean standard(Key key) {
        return key.standardValue().equals(Optional.of(values.get(key)));
    }

    /** The line of a key: {@code at_cm = [4, 18, 36]}. */
    String line(Key key) {
        Value value = values.get(key);
        if (value.numbers().isEmpty()) {
            return key.base() + " = " + quoted(value.word());
        }
        Unit unit = key.units().stream().filter(one -> value.numbers().stream().allMatch(one::holds))
                .min(Comparator.comparingInt(one -> written(value.numbers(), one).length()))
                .orElse(key.units().get(0));
        String written = written(value.numbers(), unit);
        return key.name(unit) + " = " + (value.numbers().size() == 1 ? written : "[" + written + "]");
    }

    static String quoted(String word) {
        return "\"" + Toml.tomlEscape(word) + "\"";
    }

    private static boolean differs(Value one, Value other) {
        if (!one.word().equals(other.word()) || one.numbers().size() != other.numbers().size()) {
            return true;
        }
        for (int n = 0; n < one.numbers().size(); n++) {
            if (!(Math.abs(one.numbers().get(n) - other.numbers().get(n)) <= ROUNDING)) {
                return true;
            }
        }
        return false;
    }

    private static String written(List<Double> si, Unit unit) {
        return si.stream().map(unit::fromSi).map(Shown::number).collect(Collectors.joining(", "));
    }
}
