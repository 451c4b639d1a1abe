package slackwater.scenario;

import java.util.List;
import java.util.stream.Collectors;
import slackwater.scenario.format.Fault;

/** Everything that is wrong with a scenario file, in the order of its lines. */
public final class ScenarioFaults extends Exception {
    private final transient List<Fault> faults;

    public ScenarioFaults(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    /** At least one fault. */
    public List<Fault> faults() {
        return faults;
    }
}
