package slackwater.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The constants of an enumeration as people write them: LARGE_POLYP is "large-polyp". */
final class Words<E extends Enum<E>> {
    private final Class<E> type;

    Words(Class<E> type) {
        this.type = type;
    }

    List<String> all() {
        return Arrays.stream(type.getEnumConstants()).map(this::of).toList();
    }

    String of(E constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    E meant(String word) {
        return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
