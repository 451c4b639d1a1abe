package slackwater.viewer.edit;

import java.nio.file.Path;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;

/** The example tanks. */
public final class Tanks {
    public static final Path FOLDER = Path.of("..", "scenarios");

    private Tanks() {
    }

    public static Scenario terrace() {
        return example("terrace-120.toml");
    }

    public static Scenario nano() {
        return example("nano-30.toml");
    }

    public static Scenario example(String name) {
        try {
            return ScenarioReader.read(FOLDER.resolve(name));
        } catch (ScenarioFaults faults) {
            throw new AssertionError(faults);
        }
    }
}
