package slackwater.detritus;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import slackwater.field.FlowRecord;
import slackwater.scenario.Scenario;

/**
 * Follows grains through a recorded flow, which is played again from its start whenever it ends. They are let go a few
 * at a time, all over the record, since a gust or a lull at one moment would decide what becomes of a pinch. Grains do
 * not feel each other nor does the water feel them, so each goes its way alone: the work is dealt out in fixed lots,
 * and since each grain has random numbers of its own, the result is the same to the last bit on any number of threads.
 */
public final class Tracker {
    private static final int LOT = 128;
    /** So many grains are let go at the same moment of the record. */
    static final int TOGETHER = 16;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final double NEARLY = 1e-9;

    private final FlowRecord record;
    private final Ground ground;
    private final Walk.Terrain terrain;
    private final List<Release> releases;
    private final Schedule schedule;
    private final Cloud cloud;
    private final Dice dice;
    private final List<Scene> scenes = new ArrayList<>();

    private Tracker(Scenario scenario, FlowRecord record, List<Release> releases, Schedule schedule, long seed) {
        this.record = record;
        this.ground = new Ground(scenario, record.grid(), record.fluid());
        this.terrain = new Walk.Terrain(ground, Slopes.of(scenario.rocks(), record, ground), new Water(record),
                new Eddies(record));
        this.releases = List.copyOf(releases);
        this.schedule = schedule;
        this.dice = new Dice(seed);
        this.cloud = Start.of(this.releases, ground, record, dice);
        for (double timeS : schedule.scenesS()) {
            scenes.add(Scene.of(timeS, cloud));
        }
    }

    /**
     * Lets grains go and follows them.
     *
     * @param scenario the tank of the record
     * @param chance the seed of all that is left to chance, and the threads, on which the result does not depend
     */
    public static Drift follow(Scenario scenario, FlowRecord record, List<Release> releases, Schedule schedule,
                               Chance chance) {
        return new Tracker(scenario, record, releases, schedule, chance.seed()).run(chance.threads());
    }

    /** What is left to chance, and to how many threads. */
    public record Chance(long seed, int threads) {
    }

    private Drift run(int threads) {
        int times = 1 + (int) Math.floor(schedule.lengthS() / schedule.countEveryS() + NEARLY);
        Census census = Census.empty(schedule.countEveryS(), times, releases.size());
        ExecutorService crew = Executors.newFixedThreadPool(threads);
        try {
            List<Future<Census>> lots = new ArrayList<>();
            for (int from = 0; from < cloud.size(); from += LOT) {
                int first = from;
                lots.add(crew.submit(() -> lot(first, Math.min(cloud.size(), first + LOT), times)));
            }
            for (Future<Census> lot : lots) {
                census.add(lot.get());
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while grains were followed", stop);
        } catch (ExecutionException broken) {
            throw new IllegalStateException("grains were lost", broken.getCause());
        } finally {
            crew.shutdownNow();
        }
        return new Drift(releases, census, List.copyOf(scenes));
    }

    private Census lot(int from, int to, int times) {
        Census census = Census.empty(schedule.countEveryS(), times, releases.size());
        Walk walk = new Walk(record, terrain,
                releases.stream().map(Release::grain).toList(), cloud, dice);
        for (int first = from; first < to; first += TOGETHER) {
            follow(first, Math.min(to, first + TOGETHER), walk, census);
        }
        return census;
    }

    private void follow(int from, int to, Walk walk, Census census) {
        int begin = begin(from / TOGETHER);
        double nowS = 0;
        int counted = 0;
        int shown = 0;
        for (long interval = 0; ; interval++) {
            while (counted < census.times() && counted * schedule.countEveryS() <= nowS + NEARLY) {
                count(from, to, census, counted++);
            }
            while (shown < scenes.size() && scenes.get(shown).timeS() <= nowS + NEARLY) {
                cloud.show(from, to, record.grid().cellSizeM(), scenes.get(shown++));
            }
            if (counted == census.times() && shown == scenes.size()) {
                return;
            }
            int frame = (int) ((begin + interval) % record.frames());
            walk.step(from, to, frame, interval);
            nowS += record.stepS(frame);
        }
    }

    /** The frame at which a number of grains is let go: all over the record, and evenly for any that follow upon it. */
    private int begin(int number) {
        double turn = number * GOLDEN;
        return (int) ((turn - Math.floor(turn)) * record.frames());
    }

    private void count(int from, int to, Census census, int time) {
        for (int n = from; n < to; n++) {
            census.counts()[time][cloud.group[n]][cloud.place[n]]++;
            if (releases.get(cloud.group[n]).from() instanceof Release.From.OnCoral own
                    && isStillOn(own.coral(), n)) {
                census.onOwnCoral()[time][cloud.group[n]]++;
            }
        }
    }

    private boolean isStillOn(int coral, int n) {
        return cloud.place[n] == Place.CORAL.ordinal() ? cloud.at[n] == coral
                : cloud.place[n] == Place.WATER.ordinal() && ground.isAt(coral, cloud.x[n], cloud.y[n], cloud.z[n]);
    }

    /** How many grains a list of releases comes to. */
    static int size(List<Release> releases) {
        return Math.toIntExact(releases.stream().mapToLong(Release::count).sum());
    }
}
