package slackwater.scenario;

import java.util.List;
import java.util.Optional;

/**
 * What was asked: a tank, what stands in it, what moves its water, the corals to judge, and what of the user's own
 * sinks there. All in SI units.
 */
public record Scenario(String name, Tank tank, List<Rock> rocks, List<Pump> pumps, Optional<Return> returnLine,
                       Optional<Overflow> overflow, List<Coral> corals, List<Material> materials) {
    /** Without materials of the user's own. */
    public Scenario(String name, Tank tank, List<Rock> rocks, List<Pump> pumps, Optional<Return> returnLine,
                    Optional<Overflow> overflow, List<Coral> corals) {
        this(name, tank, rocks, pumps, returnLine, overflow, corals, List.of());
    }

    /** The same tank with other pumps. */
    public Scenario with(List<Pump> others) {
        return new Scenario(name, tank, rocks, others, returnLine, overflow, corals, materials);
    }
}
