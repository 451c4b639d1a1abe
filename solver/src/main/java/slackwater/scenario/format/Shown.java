package slackwater.scenario.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Puts values into words: short, on one line, and with nothing in them that a terminal would obey. */
public final class Shown {
    private static final int LONGEST = 40;

    private Shown() {
    }

    /** A number in full: 60, 0.25. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "nan" : value > 0 ? "inf" : "-inf";
        }
        return value == 0 ? "0" : plain(BigDecimal.valueOf(value));
    }

    /** A number to three figures, for a computed one. */
    public static String about(double value) {
        return value == 0 ? "0" : plain(new BigDecimal(value).round(new MathContext(3)));
    }

    /** Numbers in brackets, as TOML has them. */
    public static String numbers(List<Double> values) {
        return values.stream().map(Shown::number).collect(Collectors.joining(", ", "[", "]"));
    }

    /** Somebody's text in quotes, cut where it is long, control characters written as \\u escapes. */
    public static String text(String text) {
        StringBuilder shown = new StringBuilder("\"");
        text.codePoints().limit(LONGEST).forEach(point -> {
            if (Character.isISOControl(point) || Character.getType(point) == Character.FORMAT) {
                shown.append(String.format("\\u%04x", point));
            } else {
                shown.appendCodePoint(point);
            }
        });
        return shown.append(text.codePointCount(0, text.length()) > LONGEST ? "...\"" : "\"").toString();
    }

    /** A key of a file as it is, in quotes only where it has more than letters, digits, dashes and underscores. */
    static String bare(String key) {
        return key.length() <= LONGEST && key.matches("[A-Za-z0-9_-]+") ? key : text(key);
    }

    /** Any value that TOML can hold. */
    static String value(Object value) {
        if (value instanceof String text) {
            return text(text);
        }
        if (value instanceof TomlTable) {
            return "a table";
        }
        if (value instanceof TomlArray array) {
            return array(array);
        }
        return value instanceof Double number ? number(number) : value.toString();
    }

    private static String array(TomlArray array) {
        String all = array.toList().stream().limit(LONGEST)
                .map(item -> item instanceof TomlArray ? "[...]" : value(item))
                .collect(Collectors.joining(", ", "[", "]"));
        return all.length() <= 2 * LONGEST ? all : "a list of " + array.size();
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return Math.abs(stripped.scale()) > 20 ? stripped.toString() : stripped.toPlainString();
    }
}
