package slackwater.detritus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import slackwater.detritus.Release.From;
import slackwater.field.FlowRecord;
import slackwater.scenario.Scenario;

/** The standard tries of a run: food and sand on every coral, food all over the surface, waste anywhere. */
public final class Trials {
    private static final double COUNT_S = 1;
    private static final int SCENES = 61;
    private static final List<Double> SHOWN_S = IntStream.range(0, SCENES)
            .mapToObj(n -> n * Clearance.WATCHED_S / (SCENES - 1)).toList();
    private static final int ON_CORALS = 12_000;
    private static final int MOST_A_PINCH = 200;
    private static final int LEAST_A_PINCH = 20;
    private static final int IN_TANK = 10_000;
    private static final List<String> ON_EACH = List.of(Grains.FOOD, Grains.SAND);

    private final Scenario scenario;
    private final FlowRecord record;
    private final List<Double> speedDoubts;
    private final Ground ground;
    private final List<Release> releases = new ArrayList<>();
    private final List<Drag.Stress> stresses = new ArrayList<>();

    private Trials(Scenario scenario, FlowRecord record, List<Double> speedDoubts) {
        if (speedDoubts.size() != scenario.corals().size()) {
            throw new IllegalArgumentException("found " + speedDoubts.size() + " doubts of speed for "
                    + scenario.corals().size() + " corals; there must be one each, in the same order");
        }
        this.scenario = scenario;
        this.record = record;
        this.speedDoubts = List.copyOf(speedDoubts);
        this.ground = new Ground(scenario, record.grid(), record.fluid());
    }

    /** Makes all tries at once, with the speeds taken at their word. */
    public static Litter make(Scenario scenario, FlowRecord record, Tracker.Chance chance) {
        return make(scenario, record, Collections.nCopies(scenario.corals().size(), 0.0), chance);
    }

    /**
     * Makes all tries at once.
     *
     * @param speedDoubts for each coral half the width of the 95 % range of its speed, as a share of it; 0 or more
     */
    public static Litter make(Scenario scenario, FlowRecord record, List<Double> speedDoubts, Tracker.Chance chance) {
        return new Trials(scenario, record, speedDoubts).make(chance);
    }

    /** Makes only those on corals, and keeps no scenes: how each coral is cleared, and no fates. */
    public static Litter onCorals(Scenario scenario, FlowRecord record, List<Double> speedDoubts,
                                  Tracker.Chance chance) {
        Trials trials = new Trials(scenario, record, speedDoubts);
        trials.putOnCorals();
        Drift drift = Tracker.follow(scenario, record, trials.releases,
                new Schedule(Clearance.WATCHED_S, COUNT_S, List.of()), chance);
        return new Litter(trials.clearances(drift), List.of(), drift, record.loopS());
    }

    private Litter make(Tracker.Chance chance) {
        putOnCorals();
        int first = releases.size();
        releases.add(new Release(Grains.named(Grains.FOOD, scenario).orElseThrow(), new From.Surface(), IN_TANK, 1));
        releases.add(new Release(Grains.named(Grains.WASTE, scenario).orElseThrow(), new From.Everywhere(), IN_TANK,
                1));
        Drift drift = Tracker.follow(scenario, record, releases,
                new Schedule(Clearance.WATCHED_S, COUNT_S, SHOWN_S), chance);
        Fates fates = new Fates(drift, record.grid(), scenario.corals().size());
        return new Litter(clearances(drift),
                List.of(fates.of(first, "fed all over the surface"), fates.of(first + 1, "let go anywhere")), drift,
                record.loopS());
    }

    private void putOnCorals() {
        int corals = scenario.corals().size();
        int pinches = ON_EACH.size() * Clearance.TRIES;
        int pinch = corals == 0 ? 0 : Math.max(LEAST_A_PINCH, Math.min(MOST_A_PINCH, ON_CORALS / corals / pinches));
        Water water = new Water(record);
        for (int coral = 0; coral < corals; coral++) {
            stresses.add(Drag.over(coral, ground, record, water));
            for (String name : ON_EACH) {
                Grain grain = Grains.named(name, scenario).orElseThrow();
                for (double hold : Clearance.holds(speedDoubts.get(coral))) {
                    releases.add(new Release(grain, new From.OnCoral(coral), pinch, hold));
                }
            }
        }
    }

    private List<Clearance> clearances(Drift drift) {
        List<Clearance> clearances = new ArrayList<>();
        int tries = scenario.corals().size() * ON_EACH.size() * Clearance.TRIES;
        for (int release = 0; release < tries; release += Clearance.TRIES) {
            clearances.add(clearance(drift, release));
        }
        return List.copyOf(clearances);
    }

    private Clearance clearance(Drift drift, int first) {
        Release release = drift.releases().get(first);
        int coral = ((From.OnCoral) release.from()).coral();
        Drag.Stress stress = stresses.get(coral);
        List<Clearance.Course> courses = IntStream.range(first, first + Clearance.TRIES)
                .mapToObj(n -> course(drift, n)).toList();
        return new Clearance(coral, stress.meanPa(), stress.gustPa(),
                release.grain().liftPa(ground.footing(Place.CORAL, coral)), release.grain(), courses);
    }

    private static Clearance.Course course(Drift drift, int release) {
        Census census = drift.census();
        double grains = drift.releases().get(release).count();
        return new Clearance.Course(drift.releases().get(release).hold(), first(census, release, 0.5 * grains),
                first(census, release, (1 - Clearance.CLEAR) * grains),
                census.onOwnCoral()[census.times() - 1][release] / grains);
    }

    /** When no more than so many were left; empty if never. */
    private static OptionalDouble first(Census census, int release, double most) {
        return IntStream.range(0, census.times()).filter(time -> census.onOwnCoral()[time][release] <= most)
                .mapToDouble(time -> time * census.everyS()).findFirst();
    }
}
