package slackwater.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The constants of an enumeration as people write them: LARGE_POLYP is "large-polyp". */
public final class Words<E extends Enum<E>> {
    private final Class<E> type;

    public Words(Class<E> type) {
        this.type = type;
    }

    public List<String> all() {
        return Arrays.stream(type.getEnumConstants()).map(this::of).toList();
    }

    public String of(E constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public E meant(String word) {
        return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
