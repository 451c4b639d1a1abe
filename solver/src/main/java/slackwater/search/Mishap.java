package slackwater.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

/**
 * Something that may come over a tank.
 *
 * @param name in words
 * @param months of growth; empty where it is no matter of time
 * @param scenario the tank then
 * @param covered corals that a plate has grown over then
 */
public record Mishap(String name, OptionalInt months, Scenario scenario, List<String> covered) {
    /** Months at which growth is looked at; 0 is the tank of today with its plates in the way of the water. */
    public static final List<Integer> MONTHS = List.of(0, 6, 12, 18);
    private static final double FOULED_FRACTION = 0.3;

    /**
     * How bad the cases are.
     *
     * @param nightFraction share of the set outputs at night
     * @param batteryPump the pump that runs on the battery in a power cut; the first one where it is empty
     * @param batteryFraction share of its set output then
     * @param growth of plates
     * @param cellSizeM edge of the cells that will be computed on, metres
     */
    public record Severity(double nightFraction, Optional<String> batteryPump, double batteryFraction, Growth growth,
                           double cellSizeM) {
    }

    /** Every case for a tank, the tank as it is first. */
    public static List<Mishap> all(Scenario scenario, Severity severity) {
        List<Mishap> all = new ArrayList<>();
        all.add(now("as it is", scenario));
        for (Pump pump : scenario.pumps()) {
            all.add(now("pump '" + pump.name() + "' stops", stopped(scenario, pump)));
        }
        if (scenario.returnLine().isPresent()) {
            all.add(now("the return stops", withoutReturn(scenario)));
        }
        if (!scenario.pumps().isEmpty()) {
            all.add(now("all pumps at 70 % from dirt", scenario.with(scenario.pumps().stream()
                    .map(pump -> Pumps.fouled(pump, 1 - (1 - pump.foulingFraction()) * (1 - FOULED_FRACTION)))
                    .toList())));
            all.add(now(String.format(Locale.ROOT, "at night, outputs at %.0f %%",
                    severity.nightFraction() * 100), scenario.with(Pumps.times(scenario.pumps(),
                    severity.nightFraction()))));
            all.add(powerCut(scenario, severity));
        }
        if (scenario.corals().stream().anyMatch(coral -> coral.group() == CoralGroup.PLATING)) {
            for (int months : MONTHS) {
                Growth.Grown grown = severity.growth().grown(scenario, months, severity.cellSizeM());
                all.add(new Mishap(months == 0 ? "plates drawn solid, today" : "plates after " + months + " months",
                        OptionalInt.of(months), grown.scenario(), grown.covered()));
            }
        }
        return List.copyOf(all);
    }

    private static Mishap powerCut(Scenario scenario, Severity severity) {
        Pump runs = scenario.pumps().stream().filter(pump -> severity.batteryPump().map(pump.name()::equals)
                .orElse(true)).findFirst().orElse(scenario.pumps().get(0));
        Scenario dark = withoutReturn(scenario.with(List.of(Pumps.at(runs,
                runs.outputFraction() * severity.batteryFraction()))));
        return now(String.format(Locale.ROOT, "power cut, '%s' on battery at %.0f %%", runs.name(),
                severity.batteryFraction() * 100), dark);
    }

    private static Mishap now(String name, Scenario scenario) {
        return new Mishap(name, OptionalInt.empty(), scenario, List.of());
    }

    /** A pump that stands still is left out: its body does not block the water in this model. */
    static Scenario stopped(Scenario scenario, Pump pump) {
        return scenario.with(scenario.pumps().stream().filter(other -> other != pump).toList());
    }

    private static Scenario withoutReturn(Scenario scenario) {
        return new Scenario(scenario.name(), scenario.tank(), scenario.rocks(), scenario.pumps(), Optional.empty(),
                Optional.empty(), scenario.corals());
    }
}
