package slackwater.scenario.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.Toml;
import slackwater.units.Unit;

/** Writes one table by its declaration. Standard values are left out. */
public final class TableWriter {
    private final List<String> lines = new ArrayList<>();

    public TableWriter(Table format) {
        if (!format.name().isEmpty()) {
            lines.add("");
            lines.add(format.header());
        }
    }

    /** Writes a word or text. */
    public TableWriter put(Key key, String word) {
        if (!word.equals(key.standard())) {
            lines.add(key.base() + " = \"" + Toml.tomlEscape(word) + "\"");
        }
        return this;
    }

    /**
     * Writes numbers given in SI units, in that of the key's units which holds them exactly in the fewest digits: a
     * tank measured in inches stays in inches. Where none does (the numbers were computed), in the metric one, off in
     * the last place.
     */
    public TableWriter put(Key key, List<Double> si) {
        if (key.standardValue().map(standard -> standard.numbers().equals(si)).orElse(false)) {
            return this;
        }
        Unit unit = key.units().stream().filter(one -> si.stream().allMatch(one::holds))
                .min(Comparator.comparingInt(one -> written(si, one).length()))
                .orElse(key.units().get(0));
        String written = written(si, unit);
        lines.add(key.name(unit) + " = " + (si.size() == 1 ? written : "[" + written + "]"));
        return this;
    }

    public TableWriter put(Key key, double si) {
        return put(key, List.of(si));
    }

    private static String written(List<Double> si, Unit unit) {
        return si.stream().map(unit::fromSi).map(Shown::number).collect(Collectors.joining(", "));
    }

    public String text() {
        return String.join("\n", lines) + "\n";
    }
}
