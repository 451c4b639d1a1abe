package slackwater.scenario.format;

import java.util.List;
import java.util.Optional;
import slackwater.units.Dimension;
import slackwater.units.Unit;

/**
 * A key of the scenario format, declared once: the reader, the writer, the editors' schema and the format's page all
 * follow from it.
 *
 * @param base its name without the unit, such as {@code flow}
 * @param kind what its value is
 * @param required whether it must be there
 * @param standard the value that holds where it is left out, in the metric unit; empty where there is none
 * @param about one line for people
 */
public record Key(String base, Kind kind, boolean required, String standard, String about) {
    public static Key text(String base, int longest, String about) {
        return new Key(base, new Kind.Text(longest), false, "", about);
    }

    public static Key word(String base, List<String> words, String about) {
        return new Key(base, new Kind.Word(words), false, "", about);
    }

    public static Key number(String base, Dimension dimension, Limits limits, String about) {
        return numbers(base, dimension, 1, limits, about);
    }

    public static Key numbers(String base, Dimension dimension, int count, Limits limits, String about) {
        return new Key(base, new Kind.Numbers(dimension, count, limits), false, "", about);
    }

    public static Key wordOrDirection(String base, List<String> words, String about) {
        return new Key(base, new Kind.WordOrDirection(words), false, "", about);
    }

    public Key needed() {
        return new Key(base, kind, true, standard, about);
    }

    public Key standing(String value) {
        return new Key(base, kind, required, value, about);
    }

    /** Every way to write it: one for each unit, the metric one first. */
    public List<String> names() {
        return units().stream().map(this::name).toList();
    }

    /** Its name in one unit, such as {@code flow_l_per_h}. */
    public String name(Unit unit) {
        return unit.suffix().isEmpty() ? base : base + "_" + unit.suffix();
    }

    List<Unit> units() {
        return kind instanceof Kind.Numbers numbers ? numbers.dimension().units() : List.of(Unit.NONE);
    }

    /** The value that holds where the key is left out, as if it had been written. */
    Optional<Value> standardValue() {
        if (standard.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(kind instanceof Kind.Numbers numbers
                ? new Value("", List.of(numbers.dimension().metric().toSi(Double.parseDouble(standard))))
                : new Value(standard, List.of()));
    }
}
