package slackwater.scenario;

import java.util.List;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Table;

/** The whole format of a scenario file, as data. */
final class ScenarioFormat {
    static final Key NAME = Key.text("name", 120, "what to call this set-up").needed();
    static final Table WHOLE = Table.whole("A reef tank and what stands in it.", List.of(NAME),
            List.of(TankTable.FORMAT, RockTable.FORMAT, PumpTable.FORMAT, ReturnTable.FORMAT, OverflowTable.FORMAT,
                    CoralTable.FORMAT, MaterialTable.FORMAT));

    private ScenarioFormat() {
    }
}
