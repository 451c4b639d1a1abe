package slackwater.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HistoryTest {
    @Test
    void undoGoesBackAndRedoForward() {
        History<String> history = History.of("a").with("b").with("c");
        assertEquals("b", history.undone().now());
        assertEquals("a", history.undone().undone().now());
        assertFalse(history.undone().undone().canUndo());
        assertEquals("a", history.undone().undone().undone().now());
        assertEquals(history, history.undone().undone().redone().redone());
        assertEquals("c", history.redone().now());
    }

    @Test
    void aChangeForgetsWhatWasUndoneAndNoChangeIsNone() {
        History<String> history = History.of("a").with("b").undone().with("c");
        assertFalse(history.canRedo());
        assertEquals("a", history.undone().now());
        assertSame(history, history.with("c"));
    }

    /** Against the plain list of all values and a place in it. */
    @Test
    void behavesAsAListWithAPlace() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            History<Integer> history = History.of(0);
            List<Integer> all = new ArrayList<>(List.of(0));
            int place = 0;
            for (int n = 1; n < 80; n++) {
                switch (random.nextInt(3)) {
                    case 0 -> {
                        history = history.with(n);
                        all = new ArrayList<>(all.subList(0, place + 1));
                        all.add(n);
                        place++;
                    }
                    case 1 -> {
                        history = history.undone();
                        place = Math.max(0, place - 1);
                    }
                    default -> {
                        history = history.redone();
                        place = Math.min(all.size() - 1, place + 1);
                    }
                }
                assertEquals(all.get(place), history.now(), "seed " + seed);
                assertEquals(place > 0, history.canUndo());
                assertEquals(place < all.size() - 1, history.canRedo());
            }
        }
    }

    @Test
    void memoryIsBounded() {
        History<Integer> history = History.of(0);
        for (int n = 1; n < 2000; n++) {
            history = history.with(n);
        }
        assertTrue(history.past().size() <= 500);
        assertEquals(1998, history.undone().now());
    }
}
