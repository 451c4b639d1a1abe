package slackwater.search;

import java.util.List;
import java.util.stream.Collectors;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

/**
 * What to look for.
 *
 * @param scenario the tank; its pumps are the start where they are the pieces
 * @param pieces pumps to find places for
 * @param wishes what the keeper allows
 * @param objective what makes one layout better than another
 */
public record Task(Scenario scenario, List<Piece> pieces, Wishes wishes, Objective objective) {
    /** Places for the pumps that the scenario has. */
    public static Task ofOwnPumps(Scenario scenario, Wishes wishes, Objective objective) {
        return new Task(scenario, scenario.pumps().stream().map(Piece::of).toList(), wishes, objective);
    }

    /** Whether the scenario's own layout is one of these pumps, and so a start to be measured against. */
    public boolean hasStart() {
        return scenario.pumps().stream().map(Piece::of).toList().equals(pieces);
    }

    /** Whether the scenario's own layout keeps to the rules. */
    public boolean startIsAllowed() {
        return hasStart() && rules().breachM(scenario, pieces) == 0;
    }

    /** What the scenario's own layout breaks, in words; empty where it is allowed. */
    public String startBreaks() {
        return rules().breaches(scenario, pieces).stream().map(Rules.Breach::says).distinct()
                .collect(Collectors.joining("; "));
    }

    /** The tank with the pumps spread evenly along the panes: a plain layout, maybe against the rules. */
    public Scenario plain() {
        return with(codec().pumps(codec().spread()));
    }

    Codec codec() {
        return new Codec(scenario.tank(), pieces, wishes);
    }

    Rules rules() {
        return new Rules(wishes);
    }

    Ranked rank(Trial trial) {
        return new Ranked(trial, objective.value(trial.outcome(), pieces, trial.pumps()));
    }

    Scenario with(List<Pump> pumps) {
        return scenario.with(pumps);
    }
}
