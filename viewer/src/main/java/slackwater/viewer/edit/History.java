package slackwater.viewer.edit;

import java.util.ArrayList;
import java.util.List;

/**
 * A value and what it was before: every change can be undone and done again.
 *
 * @param past earlier values, the oldest first
 * @param now the present one
 * @param future undone values, the next one first
 */
public record History<T>(List<T> past, T now, List<T> future) {
    /** More than anybody undoes; a layout is small. */
    private static final int LONGEST = 500;

    public History {
        past = List.copyOf(past);
        future = List.copyOf(future);
    }

    public static <T> History<T> of(T now) {
        return new History<>(List.of(), now, List.of());
    }

    /** After a change; what was undone is forgotten. A change to the same value is none. */
    public History<T> with(T changed) {
        if (changed.equals(now)) {
            return this;
        }
        List<T> longer = new ArrayList<>(past);
        longer.add(now);
        return new History<>(longer.size() > LONGEST ? longer.subList(1, longer.size()) : longer, changed, List.of());
    }

    public boolean canUndo() {
        return !past.isEmpty();
    }

    public boolean canRedo() {
        return !future.isEmpty();
    }

    /** One change back; the same where there is none. */
    public History<T> undone() {
        if (!canUndo()) {
            return this;
        }
        List<T> ahead = new ArrayList<>(future);
        ahead.add(0, now);
        return new History<>(past.subList(0, past.size() - 1), past.get(past.size() - 1), ahead);
    }

    /** One change forward; the same where there is none. */
    public History<T> redone() {
        if (!canRedo()) {
            return this;
        }
        List<T> behind = new ArrayList<>(past);
        behind.add(now);
        return new History<>(behind, future.get(0), future.subList(1, future.size()));
    }
}
