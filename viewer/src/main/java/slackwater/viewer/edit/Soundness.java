package slackwater.viewer.edit;

import java.nio.file.Path;
import java.util.Optional;
import slackwater.analysis.Probes;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.field.UnfitGrid;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;
import slackwater.scenario.ScenarioWriter;
import slackwater.scenario.format.Fault;

/** Whether a layout could be read as a scenario file, and whether its water fits on cells. */
public final class Soundness {
    private Soundness() {
    }

    /**
     * What is wrong with a layout, in a sentence; empty where nothing is.
     *
     * @param folder where its meshes lie
     */
    public static Optional<String> fault(Scenario scenario, Path folder) {
        try {
            ScenarioReader.read(ScenarioWriter.write(scenario), "layout", folder, scenario);
            return Optional.empty();
        } catch (ScenarioFaults faults) {
            Fault first = faults.faults().get(0);
            return Optional.of(named(scenario, first.key()) + first.says());
        }
    }

    /** Why a layout does not fit on cells of a size, in a sentence; empty where it does. */
    public static Optional<String> unfit(Scenario scenario, double cellSizeM) {
        try {
            Voxels voxels = Voxels.of(scenario.tank(), scenario.rocks(), cellSizeM);
            Discretiser.discretise(scenario, voxels, 1);
            Probes.of(scenario, voxels.grid(), voxels.fluid());
            return Optional.empty();
        } catch (UnfitGrid unfit) {
            return Optional.of(unfit.getMessage());
        }
    }

    /** The name of what a fault's key belongs to, for people who see names and not a file: pump[2].at_cm. */
    private static String named(Scenario scenario, String key) {
        String table = key.replaceAll("\\[.*|\\..*", "");
        String number = key.replaceAll("^[a-z]+\\[(\\d+)].*", "$1");
        if (!number.matches("\\d{1,6}")) {
            return table.isEmpty() ? "" : table + ": ";
        }
        int index = Integer.parseInt(number) - 1;
        return switch (table) {
            case "pump" -> "pump \"" + scenario.pumps().get(index).name() + "\" ";
            case "coral" -> "coral \"" + scenario.corals().get(index).name() + "\" ";
            case "rock" -> "rock \"" + scenario.rocks().get(index).name() + "\" ";
            default -> table + ": ";
        };
    }
}
