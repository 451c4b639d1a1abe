package slackwater.search;

import java.util.ArrayList;
import java.util.List;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

/**
 * Whether a layout holds when something is a little off: pumps a fifth weaker, aims off by 5 degrees.
 *
 * @param checks one a way of being off
 */
public record Sturdiness(List<Check> checks) {
    /** How much weaker the pumps are taken to be. */
    public static final double WEAKER_FRACTION = 0.2;
    private static final double OFF_RAD = Math.toRadians(5);
    private static final double NO_SPEED_M_PER_S = 1e-6;

    /**
     * One way of being off.
     *
     * @param name in words
     * @param computed true where the water was computed anew, false where every speed was scaled
     * @param known whether there are readings to compare; not where a run failed, of the layout itself or of this way
     * @param fallen corals that were in range and would not be any more; where nothing is known, all that were in range
     */
    public record Check(String name, boolean computed, boolean known, List<String> fallen) {
        /** One of which the outcome is known. */
        public Check(String name, boolean computed, List<String> fallen) {
            this(name, computed, true, fallen);
        }

        public boolean holds() {
            return known && fallen.isEmpty();
        }
    }

    public boolean holds() {
        return checks.stream().allMatch(Check::holds);
    }

    /**
     * Tries a layout.
     *
     * <p>Speeds of a turbulent tank go in proportion to its pumps where all of them are weaker by the same share, and
     * nothing else moves the water, and nothing goes by the clock: then the readings are scaled. With a return line, or
     * with pumps that pulse, the weaker tank is computed. Aims are always computed. These runs may be on larger cells
     * than the confirmed reading; what they change is taken as a ratio.
     *
     * @param confirmed the finding of the layout as it is
     * @param runs runs the trials
     */
    public static Sturdiness of(Scenario scenario, Finding confirmed, Trials runs) {
        List<Check> checks = new ArrayList<>();
        Outcome asIs = runs.of(scenario).outcome();
        if (scalesWithPumps(scenario)) {
            checks.add(new Check("pumps 20 % weaker", false, fallen(confirmed, 1 - WEAKER_FRACTION)));
        } else {
            Scenario weaker = scenario.with(Pumps.times(scenario.pumps(), 1 - WEAKER_FRACTION));
            checks.add(check("pumps 20 % weaker", confirmed, asIs, runs.of(weaker).outcome()));
        }
        String[] ways = {"left", "right", "up", "down"};
        double[][] turns = {{OFF_RAD, 0}, {-OFF_RAD, 0}, {0, OFF_RAD}, {0, -OFF_RAD}};
        for (int n = 0; n < ways.length; n++) {
            double[] turn = turns[n];
            List<Pump> turned = scenario.pumps().stream().map(pump -> Pumps.turned(pump, turn[0], turn[1])).toList();
            checks.add(check("aims 5 degrees further " + ways[n], confirmed, asIs,
                    runs.of(scenario.with(turned)).outcome()));
        }
        return new Sturdiness(List.copyOf(checks));
    }

    /**
     * What is lost when one pump stops, one check a pump.
     *
     * @param confirmed the finding of the layout as it is
     * @param runs runs the trials
     */
    public static List<Check> outages(Scenario scenario, Finding confirmed, Trials runs) {
        Outcome asIs = runs.of(scenario).outcome();
        List<Check> checks = new ArrayList<>();
        for (Pump pump : scenario.pumps()) {
            checks.add(check("'" + pump.name() + "' stops", confirmed, asIs,
                    runs.of(Mishap.stopped(scenario, pump)).outcome()));
        }
        return List.copyOf(checks);
    }

    /** How many runs it takes for a layout. */
    public static int runs(Scenario scenario) {
        return scalesWithPumps(scenario) ? 5 : 6;
    }

    /** Whether every speed goes in proportion to the pumps' outputs when they all change together. */
    public static boolean scalesWithPumps(Scenario scenario) {
        return scenario.returnLine().isEmpty()
                && scenario.pumps().stream().allMatch(pump -> pump.pattern().kind() == Pattern.Kind.STEADY);
    }

    private static List<String> fallen(Finding confirmed, double factor) {
        return confirmed.corals().stream().filter(CoralFinding::inRange)
                .filter(coral -> !coral.isInRange(coral.meanMPerS() * factor)).map(CoralFinding::name).toList();
    }

    /** What is off against the layout itself, on the same cells: without both there is no ratio. */
    private static Check check(String name, Finding confirmed, Outcome asIs, Outcome off) {
        if (asIs instanceof Outcome.Read before && off instanceof Outcome.Read then) {
            return new Check(name, true, fallen(confirmed, before.finding(), then.finding()));
        }
        return new Check(name, true, false, confirmed.corals().stream().filter(CoralFinding::inRange)
                .map(CoralFinding::name).toList());
    }

    private static List<String> fallen(Finding confirmed, Finding asIs, Finding off) {
        List<String> fallen = new ArrayList<>();
        for (int n = 0; n < confirmed.corals().size(); n++) {
            CoralFinding coral = confirmed.corals().get(n);
            double before = asIs.corals().get(n).meanMPerS();
            double then = off.corals().get(n).meanMPerS();
            boolean good = coral.isInRange(before < NO_SPEED_M_PER_S ? then : coral.meanMPerS() * then / before);
            if (coral.inRange() && !good) {
                fallen.add(coral.name());
            }
        }
        return List.copyOf(fallen);
    }
}
