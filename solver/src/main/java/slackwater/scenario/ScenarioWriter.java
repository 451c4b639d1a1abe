package slackwater.scenario;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import slackwater.scenario.format.TableWriter;

/** Writes scenarios as TOML. Reading the text gives the same scenario again. */
public final class ScenarioWriter {
    private ScenarioWriter() {
    }

    /**
     * The scenario as text. Meshes keep the file name they were read by, so the text belongs in the same folder.
     *
     * @throws IllegalArgumentException for a rock whose solid is a union, which the format has no word for
     */
    public static String write(Scenario scenario) {
        String name = new TableWriter(ScenarioFormat.WHOLE).put(ScenarioFormat.NAME, scenario.name()).text();
        String still = scenario.pumps().isEmpty() && scenario.returnLine().isEmpty() ? "pump = []\n" : "";
        return Stream.of(
                Stream.of(name, still, TankTable.write(scenario.tank()).text()),
                scenario.rocks().stream().map(RockTable::write).map(TableWriter::text),
                scenario.pumps().stream().map(PumpTable::write).map(TableWriter::text),
                scenario.returnLine().stream().map(ReturnTable::write).map(TableWriter::text),
                scenario.overflow().stream().map(OverflowTable::write).map(TableWriter::text),
                scenario.corals().stream().map(CoralTable::write).map(TableWriter::text),
                scenario.materials().stream().map(MaterialTable::write))
                .flatMap(part -> part)
                .collect(Collectors.joining());
    }
}
