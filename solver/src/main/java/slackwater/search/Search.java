package slackwater.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slackwater.scenario.Pump;

/**
 * Looks for layouts: so many separate searches ("islands"), each with its own share of the budget and its own seed, so
 * that separate machines can run one each and their logs can be merged.
 *
 * @param task what to look for
 * @param budget trials in all
 * @param islands how many searches share it
 * @param seed of them all
 */
public record Search(Task task, int budget, int islands, long seed) {
    private static final double NEAR_M = 0.05;
    private static final double NEAR_COSINE = Math.cos(Math.toRadians(15));

    public Search {
        if (islands < 1 || budget < islands) {
            throw new IllegalArgumentException("a search needs at least one trial for each of its parts: " + budget
                    + " trials, " + islands + " parts");
        }
    }

    /** Runs every island, one after the other; all trials, best first. */
    public List<Ranked> run(Trials trials) {
        Map<String, Ranked> all = new LinkedHashMap<>();
        for (int island = 1; island <= islands; island++) {
            island(island, trials).forEach(one -> all.putIfAbsent(one.trial().key(), one));
        }
        return Island.sorted(List.copyOf(all.values()));
    }

    /**
     * Runs one island, as one machine of several does.
     *
     * @param number counted from 1
     * @return its trials in the order in which they were made
     */
    public List<Ranked> island(int number, Trials trials) {
        int share = budget / islands + (number <= budget % islands ? 1 : 0);
        return new Island(task, trials, share, seed + 1_000_003L * (number - 1)).run();
    }

    /** The best few that have a reading and are not nearly alike, best first. */
    public static List<Ranked> bestFew(List<Ranked> sorted, int most) {
        List<Ranked> few = new ArrayList<>();
        for (Ranked one : sorted) {
            boolean alike = few.stream().anyMatch(other -> isNear(one.trial().pumps(), other.trial().pumps()));
            if (few.size() < most && one.isRead() && !alike) {
                few.add(one);
            }
        }
        return List.copyOf(few);
    }

    private static boolean isNear(List<Pump> pumps, List<Pump> others) {
        for (int n = 0; n < pumps.size(); n++) {
            Pump pump = pumps.get(n);
            Pump other = others.get(n);
            if (pump.atM().minus(other.atM()).length() > NEAR_M || pump.aim().dot(other.aim()) < NEAR_COSINE
                    || Math.abs(pump.outputFraction() - other.outputFraction()) > 0.15) {
                return false;
            }
        }
        return true;
    }
}
