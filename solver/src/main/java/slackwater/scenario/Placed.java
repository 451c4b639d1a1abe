package slackwater.scenario;

import java.util.List;
import slackwater.scenario.format.Entry;

/** A thing beside the entry it was read from, so that a fault found later can still tell the line. */
record Placed<T>(T thing, Entry entry) {
    static <T> List<T> things(List<Placed<T>> placed) {
        return placed.stream().map(Placed::thing).toList();
    }
}
