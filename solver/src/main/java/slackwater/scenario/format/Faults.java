package slackwater.scenario.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers everything wrong with one file, so that all of it can be told at once. */
public final class Faults {
    /** More than anybody reads; a hostile file could hold a hundred thousand. */
    private static final int MOST_TOLD = 100;

    private final String file;
    private final List<Fault> found = new ArrayList<>();

    public Faults(String file) {
        this.file = file;
    }

    public void add(int line, String key, String says) {
        found.add(new Fault(file, line, key, says));
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** The faults in the order of their lines; of very many, the first ones and how many are left out. */
    public List<Fault> inOrder() {
        List<Fault> sorted = found.stream().sorted(Comparator.comparingInt(Fault::line)).toList();
        if (sorted.size() <= MOST_TOLD) {
            return sorted;
        }
        List<Fault> told = new ArrayList<>(sorted.subList(0, MOST_TOLD));
        told.add(new Fault(file, 0, "", "and " + (sorted.size() - MOST_TOLD) + " faults more"));
        return told;
    }
}
